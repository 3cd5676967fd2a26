#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Runs every sample of docs/console.md with the program given and writes its output into the document."""
import os
import shlex
import subprocess
import sys


def main(program):
    root = os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "..")
    path = os.path.join(root, "docs", "console.md")
    with open(path, encoding="utf-8") as document:
        lines = document.read().split("\n")
    written, sample = [], False
    for line in lines:
        if line.startswith("```"):
            sample = line == "```console"
            written.append(line)
        elif sample and line.startswith("$ cordreach"):
            words = shlex.split(line[2:])[1:]
            ran = subprocess.run([os.path.abspath(program), *words], cwd=root, capture_output=True, text=True)
            written.append(line)
            written.extend((ran.stdout + ran.stderr).rstrip("\n").split("\n"))
        elif not sample:
            written.append(line)
    with open(path, "w", encoding="utf-8") as document:
        document.write("\n".join(written))


if __name__ == "__main__":
    if len(sys.argv) != 2:
        sys.exit("usage: refresh_console_samples.py PROGRAM")
    main(sys.argv[1])
