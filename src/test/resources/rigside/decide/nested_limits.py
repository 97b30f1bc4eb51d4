"""Limits of the variance parts of nested.json, to be run beside it; made with SciPy 1.17.1.

trial: exact, df * ms / chi-square quantiles. donning: Satterthwaite 1946, with
f = (MSd - MSt)^2 / (MSd^2 / dfd + MSt^2 / dft); where no donning variance is seen, 0 and
dfd * MSd / chi-square quantile / n0.
"""
import json
from scipy.stats import chi2

file = json.load(open("nested.json"))
sets = [(f"{name}, {scale}", s[scale]) for name, s in file["nested"].items() for scale in ("raw", "log") if scale in s]
sets.append(("one condition", file["one_condition"]["six_donnings_three_trials"]["raw"]))
print("set,confidence,trial_low,trial_high,donning_low,donning_high")
for name, s in sets:
    dfd, msd = (s["anova"]["donning_within_condition"][k] for k in ("df", "ms"))
    dft, mst = (s["anova"]["trial_within_donning"][k] for k in ("df", "ms"))
    for confidence in (0.8, 0.95):
        tail = (1 - confidence) / 2
        limits = lambda v, f: (v * f / chi2.ppf(1 - tail, f), v * f / chi2.ppf(tail, f))
        trial = limits(mst, dft)
        if msd > mst:
            f = (msd - mst) ** 2 / (msd**2 / dfd + mst**2 / dft)
            donning = limits((msd - mst) / s["n0"], f)
        else:
            donning = (0, limits(msd, dfd)[1] / s["n0"])
        print(name.replace(", ", " "), confidence, sep=",", end=",")
        print(",".join(f"{x:.11g}" for x in (*trial, *donning)))
