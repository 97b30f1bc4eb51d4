# Values of the recorded demonstration, reckoned apart from the program.
# python3 src/test/resources/report/figures-reference.py < demo/recorded-session/journal.jsonl
# Python 3.11, standard library: statistics.harmonic_mean, geometric_mean.
import json
import statistics
import sys

rows = [json.loads(line) for line in sys.stdin]
donnings, ambient, mask, trials = {}, {}, {}, {}
for row in rows:
    if row["event"] == "donning-started":
        donnings[row["donning"]] = (row["round"], row["condition"])
    if row["event"] == "entry-captured":
        slot = row["slot"]
        donning = slot["place"].get("donning")
        kept = {"ambient": ambient, "mask": mask, "trial": trials}.get(slot["kind"])
        if kept is not None:
            kept.setdefault(donning, []).append(row["value"]["number"])
assert not any(row["event"] in ("entry-voided", "donning-struck") for row in rows)
for donning, (round_, condition) in donnings.items():
    around = statistics.fmean(ambient[donning])
    fit = statistics.harmonic_mean([around / each for each in mask[donning]])
    print(condition, round_, repr(fit), repr(statistics.geometric_mean(trials[donning])))
