#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Prints the first sheet of a spreadsheet file as CSV; fails on a formula. Standard library only."""
import csv
import re
import sys
import xml.etree.ElementTree as ElementTree
import zipfile

NAMESPACE = "{http://schemas.openxmlformats.org/spreadsheetml/2006/main}"


def text_of(element):
    return "".join(part.text or "" for part in element.iter(NAMESPACE + "t"))


def column_of(reference):
    number = 0
    for letter in re.match("[A-Z]+", reference).group():
        number = number * 26 + ord(letter) - ord("A") + 1
    return number - 1


def main():
    with zipfile.ZipFile(sys.argv[1]) as book:
        strings = [text_of(item) for item in ElementTree.fromstring(book.read("xl/sharedStrings.xml"))]
        sheet = ElementTree.fromstring(book.read("xl/worksheets/sheet1.xml"))
    rows = []
    for row in sheet.iter(NAMESPACE + "row"):
        cells = {}
        for cell in row.iter(NAMESPACE + "c"):
            if cell.find(NAMESPACE + "f") is not None:
                sys.exit("a formula in " + cell.get("r"))
            value = cell.find(NAMESPACE + "v")
            if value is not None:
                cells[column_of(cell.get("r"))] = strings[int(value.text)] if cell.get("t") == "s" else value.text
        rows.append([cells.get(column, "") for column in range(max(cells, default=-1) + 1)])
    csv.writer(sys.stdout, lineterminator="\n").writerows(rows)


if __name__ == "__main__":
    main()
