"""Reads a data package of a session by its own description alone, checks it and makes its comparisons again.

    python3 check-package.py FOLDER

Standard library only. Prints what it made again; stops with exit status 1 and every fault found.
Paired designs only: differences within a round, natural logarithms where ratios are compared.
"""

import csv
import datetime
import hashlib
import json
import math
import os
import re
import sys

folder = sys.argv[1]
faults = []


def must(holds, what):
    if not holds:
        faults.append(what)


def typed(kind, form, cell):
    if kind == "integer":
        return int(cell)
    if kind == "number":
        return float(cell)
    if kind == "boolean":
        return {"true": True, "false": False}[cell]
    if kind == "datetime":
        return datetime.datetime.strptime(cell, form)
    return cell


def read(resource):
    name = resource["name"]
    path = os.path.join(folder, resource["path"])
    with open(path, "rb") as file:
        content = file.read()
    must(len(content) == resource["bytes"], name + ": bytes")
    must("sha256:" + hashlib.sha256(content).hexdigest() == resource["hash"], name + ": hash")
    dialect = resource["dialect"]
    with open(path, encoding=resource["encoding"], newline="") as file:
        lines = list(
            csv.reader(
                file,
                delimiter=dialect["delimiter"],
                quotechar=dialect["quoteChar"],
                doublequote=dialect["doubleQuote"],
                strict=True,
            )
        )
    fields = resource["schema"]["fields"]
    names = [field["name"] for field in fields]
    must(lines[0] == names, name + ": first line")
    rows = []
    for line in lines[1:]:
        must(len(line) == len(fields), name + ": cells of " + repr(line))
        row = {}
        for field, cell in zip(fields, line):
            where = name + "." + field["name"]
            limits = field.get("constraints", {})
            if cell in resource["schema"]["missingValues"]:
                must(not limits.get("required"), where + ": required")
                row[field["name"]] = None
                continue
            try:
                row[field["name"]] = typed(field["type"], field["format"], cell)
            except (ValueError, KeyError):
                must(False, where + ": not of its type: " + cell)
            must(cell in limits.get("enum", [cell]), where + ": not one of its words: " + cell)
        rows.append(row)
    for field in fields:
        if field.get("constraints", {}).get("unique"):
            cells = [row[field["name"]] for row in rows]
            must(len(set(cells)) == len(cells), name + "." + field["name"] + ": unique")
        must("unit" not in field or field["unit"] in field["description"], name + ": unit")
    return rows


def keys(resource, tables):
    name = resource["name"]
    schema = resource["schema"]
    own = [tuple(row[field] for field in schema["primaryKey"]) for row in tables[name]]
    must(len(set(own)) == len(own) and not any(None in key for key in own), name + ": primary key")
    for link in schema.get("foreignKeys", []):
        to = link["reference"]
        there = {row[to["fields"]] for row in tables[to["resource"]]} | {None}
        must(all(row[link["fields"]] in there for row in tables[name]), name + ": " + link["fields"])


def tail(t, degrees):
    """The chance that Student's t is above t: cos^(degrees - 1) between two angles (Simpson)."""

    def area(low, high):
        steps = 20000
        width = (high - low) / steps
        heights = [math.cos(low + i * width) ** (degrees - 1) for i in range(steps + 1)]
        inner = 4 * math.fsum(heights[1:-1:2]) + 2 * math.fsum(heights[2:-1:2])
        return width / 3 * (heights[0] + heights[-1] + inner)

    return area(math.atan(t / math.sqrt(degrees)), math.pi / 2) / area(-math.pi / 2, math.pi / 2)


def close(one, other, where):
    must(abs(one - other) <= 1e-9 * max(abs(one), abs(other), 1e-9), f"{where}: {one} {other}")


def again(row, tables, plan, shared):
    measure, condition = row["measure"], row["condition"]
    ratio = row["compared_by"] == "ratio"
    inward = math.log if ratio else float
    outward = math.exp if ratio else float
    values = {
        (each["round"], each["condition"]): each["value"] for each in tables["values-" + measure]
    }
    rounds = sorted(
        at for at, worn in values if worn == condition and (at, row["reference"]) in values
    )[: row["n"]]
    changes = [inward(values[at, condition]) - inward(values[at, row["reference"]]) for at in rounds]
    n = len(changes)
    estimate = math.fsum(changes) / n
    spread = math.sqrt(math.fsum((each - estimate) ** 2 for each in changes) / (n - 1))
    error = spread / math.sqrt(n)
    where = f"{measure}, {condition}, look {row['look']}"
    must(n == row["n"] and n - 1 == row["degrees_of_freedom"], where + ": n")
    close(row["estimate"], outward(estimate), where + ": estimate")
    close(row["standard_error"], error, where + ": standard error")
    half = row["critical"] * error + row["rounding_shift"]
    close(row["low"], outward(estimate - half), where + ": low")
    close(row["high"], outward(estimate + half), where + ": high")
    if row["look"] == 1:
        spent = (1 - plan["confidence"]) / shared * (n / plan["most"]) ** plan["exponent"]
        close(2 * tail(row["critical"], n - 1), spent, where + ": critical")
    print(where, n, repr(outward(estimate)), repr(error))


with open(os.path.join(folder, "datapackage.json"), encoding="utf-8") as file:
    package = json.load(file)
must(package["profile"] == "tabular-data-package", "profile")
must(re.fullmatch("[a-z0-9._-]+", package["name"]), "name")
tables = {resource["name"]: read(resource) for resource in package["resources"]}
present = sorted(os.listdir(folder))
named = sorted(["datapackage.json"] + [each["path"] for each in package["resources"]])
must(present == named, f"files {present}, named {named}")
for resource in package["resources"]:
    keys(resource, tables)
plan = package.get("rigside-plan", {})
if plan.get("design") == "rounds":
    shared = len(tables["conditions"]) - 1
    if plan["shared-over-measures"]:
        shared *= max(1, sum(each["decides"] for each in tables["measures"]))
    for row in tables["comparisons"]:
        again(row, tables, plan, shared)
for fault in faults:
    print(fault, file=sys.stderr)
sys.exit(1 if faults else 0)
