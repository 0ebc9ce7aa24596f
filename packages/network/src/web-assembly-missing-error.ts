/** The platform runs no WebAssembly, with which networks are solved. */
export class WebAssemblyMissingError extends Error {
  readonly code = 'WebAssemblyMissing';
  override readonly name = 'WebAssemblyMissingError';

  constructor(cause?: unknown) {
    super(
      "networks are solved with WebAssembly, which is switched off here: allow it, in a browser by script-src 'wasm-unsafe-eval' in the content security policy, in Node by leaving out --jitless",
      { cause },
    );
  }
}
