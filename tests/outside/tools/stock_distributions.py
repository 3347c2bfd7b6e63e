#!/usr/bin/env python3
"""Distribution functions of sums of use, by scipy.stats and convolution on a grid.

Reads a JSON list of cases {"parts": [...], "at": [x, ...]}; a part is {"t": [centre, scale, freedom]} or {"chance": {shape,
days, size_shape, scale_shape, scale_rate, horizon}}. Writes a JSON list of lists: P(sum of the parts <= x).

Chance is a Poisson number of gamma sizes, its rate and inverse scale being gamma themselves: the number is negative binomial, a sum
of n sizes is scale_rate times a beta prime variable with n size_shape and scale_shape.
"""
import json
import sys

import numpy as np
from scipy import stats

CELLS = 40001


def chance_cdf(part, x):
    count = stats.nbinom(part["shape"], part["days"] / (part["days"] + part["horizon"]))
    x = np.asarray(x, dtype=float)
    total = np.where(x >= 0, count.pmf(0), 0.0)
    for n in range(1, int(count.isf(1e-12)) + 1):
        sizes = stats.betaprime(n * part["size_shape"], part["scale_shape"], scale=part["scale_rate"])
        total = total + count.pmf(n) * sizes.cdf(np.maximum(x, 0))
    return total


def cdf(part, x):
    if "chance" in part:
        return chance_cdf(part["chance"], x)
    return stats.t(part["t"][2], part["t"][0], part["t"][1]).cdf(x)


def convolved(first, second, at):
    """P(first + second <= x) = sum over cells of second: its mass times P(first <= x - middle); first has a smooth cdf."""
    if "chance" in second:
        low, high = 0.0, second["chance"]["scale_rate"]
        while 1 - chance_cdf(second["chance"], [high])[0] > 1e-7:
            high *= 2
    else:
        t = stats.t(second["t"][2], second["t"][0], second["t"][1])
        low, high = t.ppf(1e-9), t.isf(1e-9)
    edges = np.linspace(low, high, CELLS)
    below = cdf(second, edges)
    mass = np.diff(below)
    middles = (edges[1:] + edges[:-1]) / 2
    return [float(below[0] * cdf(first, x - low) + mass @ cdf(first, x - middles)) for x in at]


def solve(case):
    parts = case["parts"]
    if len(parts) == 1:
        return [float(p) for p in np.atleast_1d(cdf(parts[0], np.array(case["at"])))]
    return convolved(parts[0], parts[1], case["at"])


json.dump([solve(case) for case in json.load(sys.stdin)], sys.stdout)
