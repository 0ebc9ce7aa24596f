/**
 * Why a file cannot be read, and what to do.
 *
 * @param error - what the system said
 * @param what - what the file was to be, with its article
 * @returns a sentence
 */
export function whyUnreadable(error: unknown, what: string): string {
  const code = error instanceof Error && 'code' in error ? error.code : undefined;
  switch (code) {
    case 'ENOENT':
      return `there is no such file. Give the path of ${what}, for example my-house.yaml.`;
    case 'EISDIR':
      return `this is a folder. Give the path of ${what} in it.`;
    case 'EACCES':
      return 'this file may not be read. Check its permissions.';
    default:
      return `the file could not be read (${String(code ?? 'unknown reason')}).`;
  }
}
