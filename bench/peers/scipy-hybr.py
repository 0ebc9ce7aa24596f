"""SciPy's hybrid method on the same networks, called as from a program in Python.

usage: scipy-hybr.py NETWORKS SOLUTIONS REPEATS, files as harness.c describes them.
"""

import sys
import time

import numpy as np
from scipy.optimize import root

WIDTH = 1e-6


class Network:
    def __init__(self, tokens):
        self.zones, links = int(next(tokens)), int(next(tokens))
        rows = np.array([[float(next(tokens)) for _ in range(5)] for _ in range(links)])
        self.start, self.end = rows[:, 0].astype(int), rows[:, 1].astype(int)
        self.c, self.n, self.drive = rows[:, 2], rows[:, 3], rows[:, 4]
        # Incidence: boundaries have no row.
        self.incidence = np.zeros((self.zones, links))
        for link in range(links):
            if self.start[link] >= 0:
                self.incidence[self.start[link], link] += 1
            if self.end[link] >= 0:
                self.incidence[self.end[link], link] -= 1
        self.fixed = self.n == 0

    def laws(self, p):
        x = self.incidence.T @ p + self.drive
        size = np.maximum(np.abs(x), WIDTH)
        flow = self.c * size**self.n
        slope = self.n * flow / size
        flow = np.sign(x) * flow
        near = np.abs(x) <= WIDTH
        s = x[near] / WIDTH
        c, n = self.c[near], self.n[near]
        flow[near] = 0.5 * c * WIDTH**n * s * (3 - n + (n - 1) * s * s)
        slope[near] = 0.5 * c * WIDTH ** (n - 1) * (3 - n + 3 * (n - 1) * s * s)
        flow[self.fixed], slope[self.fixed] = self.c[self.fixed], 0
        return flow, slope

    def residual(self, p):
        return self.incidence @ self.laws(p)[0]

    def slopes(self, p):
        return (self.incidence * self.laws(p)[1]) @ self.incidence.T


def main():
    with open(sys.argv[1]) as file:
        tokens = iter(file.read().split())
    networks = [Network(tokens) for _ in range(int(next(tokens)))]
    times = []
    for _ in range(int(sys.argv[3])):
        begin = time.process_time()
        found = [
            root(w.residual, np.zeros(w.zones), jac=w.slopes, method="hybr", tol=1e-12)
            for w in networks
        ]
        times.append((time.process_time() - begin) / len(networks) * 1e6)
    failed = sum(not result.success for result in found)
    print(f"{np.median(times):.6f} {failed}")
    with open(sys.argv[2], "w") as out:
        for result in found:
            out.write(" ".join(f"{value:.17g}" for value in result.x) + "\n")


main()
