#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""check.py SITE STEP: whether the saved building has what that step, and every step before it, should have left."""
import hashlib
import json
import os
import sys

FOOT = 0.3048
SHEET = 1600 / 1480 * 120 * FOOT  # metres across the plan, whose outer walls are 120 ft apart
PIXELS = 800 / 72 * 200  # of the page when it is drawn


def near(value, wanted, share):
    return abs(value - wanted) <= share * abs(wanted)


def ground_floor(site):
    return next(floor for floor in site["floors"] if not floor.get("level"))


def by_label(site):
    return {outlet["label"]: outlet for outlet in site["outlets"]}


def breakers(site, label):
    numbers = {circuit["id"]: circuit["number"] for circuit in site["circuits"]}
    contacts = by_label(site)[label]["contacts"]
    return {numbers.get(contact.get("circuit")) for contact in contacts}


def begun(site, _):
    assert site["name"] == "Elm House", site["name"]
    assert [supply["system"] for supply in site["supplies"]] == ["wye-208"], site["supplies"]
    assert sorted(panel["name"] for panel in site["panels"]) == ["1A", "1B"], site["panels"]
    assert sorted(floor["name"] for floor in site["floors"]) == ["Floor 1", "Floor 2"], site["floors"]


def scaled(site, folder):
    picture = ground_floor(site)["picture"]
    across = picture["metres_per_pixel"] * PIXELS
    assert near(across, SHEET, 0.01), f"{across} m across, not {SHEET}"
    with open(os.path.join(folder, f"{picture['hash']}.{picture['suffix']}"), "rb") as file:
        assert hashlib.sha256(file.read()).hexdigest() == picture["hash"], "the plan beside the file is another"


def outlets(site, _):
    labels = sorted(by_label(site))
    assert labels == [f"1-{number:02}" for number in range(1, 41)], labels
    places = [by_label(site)[label]["place"] for label in labels]
    assert {place["floor"] for place in places} == {ground_floor(site)["id"]}
    rows = [places[:20], places[20:]]
    for row in rows:
        assert len({round(place["at_m"][1], 6) for place in row}) == 1, "a row that is not level"
        for one, other in zip(row, row[1:]):
            step = abs(other["at_m"][0] - one["at_m"][0])
            assert near(step, 6 * FOOT, 0.01), f"{step} m between two outlets"
    assert rows[0][0]["at_m"][1] < rows[1][0]["at_m"][1], "the rows lie upon each other"


def panel(site, _):
    placed = [one["name"] for one in site["panels"] if "place" in one]
    assert placed == ["1A"], f"placed: {placed}"


def breakers_added(site, _):
    numbers = sorted(int(circuit["number"]) for circuit in site["circuits"])
    assert numbers == list(range(1, 13)), numbers
    first = next(one["id"] for one in site["panels"] if one["name"] == "1A")
    assert all(one["panel"] == first and one["rating_a"] == 20 for one in site["circuits"]), site["circuits"]


def assigned(site, numbers, wanted):
    for number in numbers:
        label = f"1-{number:02}"
        assert breakers(site, label) == {wanted}, f"{label} is on {breakers(site, label)}, not {wanted}"


def painted(site, _):
    assigned(site, range(1, 8), "1")
    assigned(site, range(21, 41), None)
    assert any(entry["kind"] == "assignment" for entry in site["history"]), "no note of it in the history"


def typed(site, _):
    assigned(site, range(8, 9), "2")


def pasted(site, _):
    assigned(site, range(8, 15), "2")
    assigned(site, range(15, 21), None)


def plugged(site, _):
    assert [machine["kind"] for machine in site["machines"]] == ["burnisher"], site["machines"]
    sockets = [hookup["socket"]["outlet"] for hookup in site["hookups"]]
    assert len(sockets) == 1 and sockets[0] in {outlet["id"] for outlet in site["outlets"]}, sockets


def nudged(site, folder):
    with open(os.path.join(os.path.dirname(folder), "before.json"), encoding="utf-8") as file:
        before = by_label(json.load(file))["1-40"]["place"]["at_m"]
    after = by_label(site)["1-40"]["place"]["at_m"]
    assert abs(after[1] - before[1] - 0.1) < 1e-6 and after[0] == before[0], f"{before} became {after}"


STEPS = {
    "begun": begun,
    "scaled": scaled,
    "outlets": outlets,
    "panel": panel,
    "breakers": breakers_added,
    "painted": painted,
    "typed": typed,
    "pasted": pasted,
    "plugged": plugged,
}


def main(path, step):
    with open(path, encoding="utf-8") as file:
        site = json.load(file)
    folder = os.path.dirname(path)
    if step == "nudged":
        return nudged(site, folder)
    for name, check in STEPS.items():
        check(site, folder)
        if name == step:
            return None
    raise SystemExit(f"check.py knows no step {step}")


try:
    main(*sys.argv[1:])
except (AssertionError, OSError, ValueError, KeyError, StopIteration) as fault:
    sys.exit(f"{sys.argv[2]}: {fault!r}")
