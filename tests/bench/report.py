#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Makes the table of timings from rows.csv and the benches' own JSON; also writes it as docs/performance.md.

report.py FOLDER MARKDOWN: FOLDER holds <name>.json of each program bench_<name> that ran. A field of rows.csv names
PROGRAM:BENCHMARK, its processor time unless #COUNTER or #real_time follows. Ends with 1 if a budget is missed.
"""
import csv
import json
import pathlib
import platform
import statistics
import subprocess
import sys

HEAD = ["work", "ours", "budget", "rival", "ratio", "conditions"]
PER_SECOND = {"ns": 1e-9, "us": 1e-6, "ms": 1e-3, "s": 1.0}


class Timings:
    """What the programs said, several repetitions a benchmark."""

    def __init__(self, folder):
        self.runs = {}
        for file in sorted(pathlib.Path(folder).glob("*.json")):
            for run in json.loads(file.read_text())["benchmarks"]:
                if run.get("run_type", "iteration") == "iteration":
                    self.runs.setdefault(f"{file.stem}:{run['run_name']}", []).append(run)

    def seconds_or_counter(self, field):
        """Time of the quickest repetition (what the machine's other work adds is not ours), middle one of a counter;
        None where it did not run or ended with an error."""
        name, _, part = field.partition("#")
        runs = [run for run in self.runs.get(name, []) if not run.get("error_occurred")]
        if not runs:
            return None
        if part in ("", "real_time"):
            return min(run[part or "cpu_time"] * PER_SECOND[run["time_unit"]] for run in runs)
        return statistics.median(run[part] for run in runs)


def shown(seconds, unit):
    if seconds is None:
        return "not measured"
    if unit == "exponent":
        return f"{seconds:.2f}"
    return f"{seconds / PER_SECOND[unit]:.3g} {unit}"


def line_of(row, timings):
    """The cells of one row, and whether it keeps what is asked of it."""
    unit = row["unit"]
    ours = timings.seconds_or_counter(row["ours"])
    cells = {"work": row["work"], "ours": shown(ours, unit), "conditions": row["conditions"], "rival": "", "ratio": ""}
    kept = True
    cells["budget"] = ""
    if row["budget"]:
        missed = ours is not None and ours / PER_SECOND[unit] > float(row["budget"])
        kept = kept and not missed and ours is not None
        cells["budget"] = f"{row['budget']} {unit}" + (" **missed**" if missed else "")
    if row["error"] and ours is not None:
        error = timings.seconds_or_counter(row["ours"].partition("#")[0] + "#" + row["error"])
        cells["ours"] += f", off by {error:.2g} K"
        kept = kept and error <= float(row["error_limit"])
        if error > float(row["error_limit"]):
            cells["budget"] += f" and {row['error_limit']} K **missed**"
    if row["rival"]:
        rival = timings.seconds_or_counter(row["rival"])
        cells["rival"] = f"{row['rival_name']}: {shown(rival, unit)}"
        if row["error"] and rival is not None:
            cells["rival"] += f", off by {timings.seconds_or_counter(row['rival'] + '#' + row['error']):.2g} K"
        if ours and rival:
            cells["ratio"] = f"{rival / ours:.3g}"
            if row["least_ratio"]:
                missed = rival / ours < float(row["least_ratio"])
                kept = kept and not missed
                cells["budget"] = f"{row['least_ratio']} times" + (" **missed**" if missed else "")
    return cells, kept


def machine():
    model = next((line.partition(":")[2].strip() for line in open("/proc/cpuinfo") if line.startswith("model name")),
                 platform.machine())
    cores = subprocess.run(["nproc"], capture_output=True, text=True, check=True).stdout.strip()
    load = open("/proc/loadavg").read().split()[0]
    return f"{model}, {cores} cores, {platform.system()} {platform.release()}; load at the end of the run {load}"


def markdown(lines):
    text = ["# Performance", "",
            "Written by `tests/bench/run`, which builds the release preset and times it here and now; not by hand.", "",
            f"Machine: {machine()}.", "",
            "Times are processor times on one core, of the quickest of the repetitions, ours and the rivals' alike, unless the",
            "conditions say otherwise; rivals run in the same program or the same run. The network's figures are those of a solve",
            "after the first, as in a window that solves its building again and again: the first also fetches its memory from the",
            "system.",
            "A work that is \"not measured\" has no bench in this tree yet.", "",
            "| " + " | ".join(HEAD) + " |", "|" + " --- |" * len(HEAD)]
    text += ["| " + " | ".join(line[head] for head in HEAD) + " |" for line in lines]
    return "\n".join(text) + "\n"


def plain(lines):
    rows = [HEAD[:-1]] + [[line[head].replace("**", "") for head in HEAD[:-1]] for line in lines]
    widths = [max(len(row[i]) for row in rows) for i in range(len(rows[0]))]
    return "\n".join("  ".join(cell.ljust(width) for cell, width in zip(row, widths)).rstrip() for row in rows)


def main(folder, target):
    timings = Timings(folder)
    with open(pathlib.Path(__file__).parent / "rows.csv", newline="") as table:
        judged = [line_of(row, timings) for row in csv.DictReader(table)]
    lines = [cells for cells, _ in judged]
    pathlib.Path(target).write_text(markdown(lines))
    print(plain(lines))
    return 0 if all(kept for _, kept in judged) else 1


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
