#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""same_cells.py OURS.csv THEIRS.csv: ends with 1 and names the cells in which the two differ. Standard library only."""
import csv
import sys


def rows_of(path):
    with open(path, encoding="utf-8-sig", newline="") as file:
        rows = [[cell.replace("\r\n", "\n") for cell in row] for row in csv.reader(file)]
    wide = max(map(len, rows))
    return [row + [""] * (wide - len(row)) for row in rows]


def main():
    ours, theirs = (rows_of(path) for path in sys.argv[1:3])
    differing = [
        f"row {i + 1}, column {k + 1}: ours {mine!r}, theirs {other!r}"
        for i, (left, right) in enumerate(zip(ours, theirs))
        for k, (mine, other) in enumerate(zip(left, right))
        if mine != other
    ]
    if len(ours) != len(theirs):
        differing.append(f"{len(ours)} rows are ours, {len(theirs)} theirs")
    print("\n".join(differing) or f"{sum(map(len, ours))} cells are the same")
    sys.exit(1 if differing else 0)


if __name__ == "__main__":
    main()
