#!/usr/bin/env python3
"""The posterior of a conjugate normal-inverse-gamma regression with correlated errors, by dense matrices (numpy, scipy.stats).

Reads a JSON list of cases {x, y, chained, share, mean[2], variance[2], scale, freedom, next}: the values y are
k x + p + e(i) - e(i-1) + noise, Var noise = s x, Var e = share s; chained[i]: e(i-1) is the one of the value before. Writes a
JSON list of {mean[2], covariance[2][2], scale, freedom, quantiles, log_likelihood}: quantiles at 5, 50 and 95 % of
k next + p + noise.
"""
import json
import sys

import numpy as np
from scipy import stats


def errors(case):
    """Covariance of the errors of all values in units of s: noise, and the line's errors by which neighbours are tied."""
    n = len(case["x"])
    covariance = np.diag(np.array(case["x"], dtype=float))
    for i in range(n):
        covariance[i, i] += 2 * case["share"]
        if i > 0 and case["chained"][i]:
            covariance[i, i - 1] -= case["share"]
            covariance[i - 1, i] -= case["share"]
    return covariance


def solve(case):
    n = len(case["x"])
    design = np.column_stack([case["x"], np.ones(n)])
    y = np.array(case["y"])
    m0 = np.array(case["mean"])
    c0 = np.diag(case["variance"])
    weight = np.linalg.inv(errors(case))
    precision = np.linalg.inv(c0) + design.T @ weight @ design
    c = np.linalg.inv(precision)
    m = c @ (np.linalg.inv(c0) @ m0 + design.T @ weight @ y)
    freedom = case["freedom"] + n
    squares = case["freedom"] * case["scale"] + y @ weight @ y + m0 @ np.linalg.inv(c0) @ m0 - m @ precision @ m
    scale = squares / freedom
    f = np.array([case["next"], 1.0])
    t = stats.t(freedom, f @ m, np.sqrt(scale * (f @ c @ f + case["next"])))
    marginal = stats.multivariate_t(design @ m0, case["scale"] * (design @ c0 @ design.T + errors(case)), case["freedom"])
    return {"mean": list(m), "covariance": c.tolist(), "scale": scale, "freedom": freedom,
            "quantiles": list(t.ppf([0.05, 0.5, 0.95])), "log_likelihood": float(marginal.logpdf(y))}


json.dump([solve(case) for case in json.load(sys.stdin)], sys.stdout)
