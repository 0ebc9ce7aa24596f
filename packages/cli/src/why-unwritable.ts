/** What the system says, in words. */
const words: Readonly<Record<string, string>> = {
  EACCES: 'writing there is not allowed',
  EPERM: 'writing there is not allowed',
  EROFS: 'writing there is not allowed',
  EISDIR: 'it is a folder',
  ENOTDIR: 'a file stands where a folder is wanted',
  EEXIST: 'a file stands where a folder is wanted',
  ENOENT: 'its folder is not there and cannot be made',
  ENAMETOOLONG: 'its name is too long',
  ELOOP: 'its links lead in a circle',
  ENOSPC: 'the disk is full',
  EDQUOT: 'the disk is full',
};

/**
 * Why something could not be written, in words.
 *
 * @param error - what was thrown
 * @returns words without a full stop
 */
export function whyUnwritable(error: unknown): string {
  if (!(error instanceof Error)) return 'unknown reason';
  const code = 'code' in error ? String(error.code) : '';
  return words[code] ?? error.message;
}
