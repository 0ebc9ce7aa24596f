import type { NetworkDescription } from '@evendraft/network';
import { Matrix, solve } from 'ml-matrix';

/**
 * What a textbook would write: full Newton steps on the residuals with a matrix library, halved until the
 * greatest residual falls. Power laws and fixed flows only.
 *
 * @param description - a network at equal heights in reference air
 * @returns a function that solves it once from zero, or gives undefined where it gives up
 */
export function textbookNewton(description: NetworkDescription): () => number[] | undefined {
  const { zones, boundaries, links } = description;
  const place = new Map(zones.map((zone, index) => [zone.id, index]));
  const fixed = new Map(boundaries.map(({ id, pressurePa }) => [id, pressurePa]));
  const density = 1.2041;

  const evaluate = (p: number[]): { residual: number[]; slopes: Matrix; greatest: number } => {
    const residual = zones.map(() => 0);
    const slopes = Matrix.zeros(zones.length, zones.length);
    const at = (id: string): number => fixed.get(id) ?? p[place.get(id)!]!;
    for (const { from, to, law } of links) {
      const x = at(from) - at(to);
      const size = Math.max(Math.abs(x), 1e-6);
      let flow: number;
      let slope = 0;
      if (law.kind === 'powerLaw') {
        const chord = (density * law.coefficientM3PerSPaN * Math.pow(size, law.exponent)) / size;
        flow = chord * x;
        slope = (Math.abs(x) > 1e-6 ? law.exponent : 1) * chord;
      } else {
        flow = law.kind === 'fixedFlow' ? (law.massFlowKgPerS ?? 0) : NaN;
      }
      const i = place.get(from);
      const j = place.get(to);
      if (i !== undefined) {
        residual[i]! += flow;
        slopes.set(i, i, slopes.get(i, i) + slope);
      }
      if (j !== undefined) {
        residual[j]! -= flow;
        slopes.set(j, j, slopes.get(j, j) + slope);
      }
      if (i !== undefined && j !== undefined) {
        slopes.set(i, j, slopes.get(i, j) - slope);
        slopes.set(j, i, slopes.get(j, i) - slope);
      }
    }
    return { residual, slopes, greatest: Math.max(...residual.map(Math.abs)) };
  };

  return () => {
    let p = zones.map(() => 0);
    let now = evaluate(p);
    const enough = 1e-9 * now.greatest;
    for (let step = 0; step < 200; step++) {
      if (now.greatest <= enough) return p;
      const d = solve(now.slopes, Matrix.columnVector(now.residual)).to1DArray();
      let t = 1;
      for (;;) {
        const trial = p.map((value, zone) => value - t * d[zone]!);
        const next = evaluate(trial);
        if (next.greatest < now.greatest || t < 1e-6) {
          p = trial;
          now = next;
          break;
        }
        t /= 2;
      }
    }
    return undefined;
  };
}
