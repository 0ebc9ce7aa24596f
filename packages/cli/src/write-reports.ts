import { randomUUID } from 'node:crypto';
import { mkdir, rename, rm, writeFile } from 'node:fs/promises';
import { basename, extname, join } from 'node:path';
import { renderJson, renderMarkdown, type Assessment } from 'evendraft';

/**
 * Writes the full report, as Markdown and as JSON, beside each other. Each file appears whole or not at all.
 *
 * The names come from the house file's own name on disk, never from what stands in it.
 *
 * @param assessment - what to write
 * @param options - folder, the house file's path, unit system
 * @returns paths written
 */
export async function writeReports(
  assessment: Assessment,
  options: { readonly folder: string; readonly houseFile: string; readonly system: 'us' | 'si' },
): Promise<readonly string[]> {
  const stem = basename(options.houseFile, extname(options.houseFile));
  await mkdir(options.folder, { recursive: true });
  const files = [
    {
      path: join(options.folder, `${stem}.md`),
      text: renderMarkdown(assessment, { system: options.system }),
    },
    { path: join(options.folder, `${stem}.json`), text: renderJson(assessment) },
  ];
  for (const { path, text } of files) await writeWhole(path, text);
  return files.map(({ path }) => path);
}

async function writeWhole(path: string, text: string): Promise<void> {
  const draft = `${path}.${randomUUID()}.part`;
  try {
    await writeFile(draft, text);
    await rename(draft, path);
  } finally {
    await rm(draft, { force: true });
  }
}
