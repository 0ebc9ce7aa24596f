import { powerTable } from '@evendraft/airflow';
import { WebAssemblyMissingError } from '../web-assembly-missing-error.js';
import { loopsCode } from './loops-code.js';

/**
 * The compiled loops; their sources, with what each does, are in `loops/` of this package. A network, a matrix, records
 * and a vector are given by their address in memory.
 */
export interface Loops {
  differences(network: number): void;
  chords(network: number): void;
  powerLaw(network: number, records: number, begin: number, end: number): void;
  powerLawInverse(network: number, records: number, begin: number, end: number): void;
  sums(network: number): void;
  goAlong(network: number, t: number): void;
  slopeAlong(network: number, vector: number): number;
  greatestThrough(network: number): number;
  greatestResidual(network: number, leastPart: number): number;
  /** 1 where the matrix was regular, else 0. */
  newtonStep(network: number, matrix: number): number;
  tangentStep(network: number, matrix: number): number;
  residualStep(network: number, matrix: number): void;
  bendOfStep(network: number, matrix: number): void;
  bendOfTrial(network: number, matrix: number): void;
  fill(network: number, matrix: number): void;
  /** 1 where every pivot was sound, else 0. */
  factorize(matrix: number): number;
  solve(matrix: number, vector: number): void;
}

/** A memory, the loops that work on it, and how much of it is taken. */
export interface LoopMemory {
  readonly buffer: ArrayBuffer;
  readonly loops: Loops;
  used: number;
}

/** What is used of the platform's WebAssembly, whose types belong to no version of the language. */
interface Platform {
  readonly WebAssembly?: {
    readonly Module: new (code: Uint8Array) => object;
    readonly Memory: new (size: { readonly initial: number }) => { readonly buffer: ArrayBuffer };
    readonly Instance: new (module: object, imports: object) => { readonly exports: unknown };
  };
}

const bytesAPage = 65_536;
let compiled: object | undefined;

/**
 * A new memory with the loops.
 *
 * @param bytes - its size, at least [bytes]
 * @throws {WebAssemblyMissingError} where the platform runs no WebAssembly
 */
export function createLoopMemory(bytes: number): LoopMemory {
  const { WebAssembly } = globalThis as unknown as Platform;
  if (WebAssembly === undefined) throw new WebAssemblyMissingError();
  if (compiled === undefined) {
    try {
      compiled = new WebAssembly.Module(bytesOf(loopsCode));
    } catch (error) {
      throw new WebAssemblyMissingError(error);
    }
  }
  const memory = new WebAssembly.Memory({ initial: Math.ceil(bytes / bytesAPage) });
  const instance = new WebAssembly.Instance(compiled, { env: { memory } });
  // The loops find the table of powers at the start.
  const table = powerTable();
  new Float64Array(memory.buffer).set(table);
  return {
    buffer: memory.buffer,
    loops: asObject(instance.exports as Loops),
    used: table.byteLength,
  };
}

function bytesOf(hexadecimal: string): Uint8Array {
  return Uint8Array.from({ length: hexadecimal.length / 2 }, (_, byte) =>
    Number.parseInt(hexadecimal.slice(2 * byte, 2 * byte + 2), 16),
  );
}

/** Exports are looked up by name at every call, which costs as much as a loop; the fields of an object are not. */
function asObject(exports: Loops): Loops {
  return {
    differences: exports.differences,
    chords: exports.chords,
    powerLaw: exports.powerLaw,
    powerLawInverse: exports.powerLawInverse,
    sums: exports.sums,
    goAlong: exports.goAlong,
    slopeAlong: exports.slopeAlong,
    greatestThrough: exports.greatestThrough,
    greatestResidual: exports.greatestResidual,
    newtonStep: exports.newtonStep,
    tangentStep: exports.tangentStep,
    residualStep: exports.residualStep,
    bendOfStep: exports.bendOfStep,
    bendOfTrial: exports.bendOfTrial,
    fill: exports.fill,
    factorize: exports.factorize,
    solve: exports.solve,
  };
}
