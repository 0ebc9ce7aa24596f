import { basename, dirname, extname, join, resolve } from 'node:path';
import {
  renderCsv,
  renderHtml,
  renderJson,
  renderMarkdown,
  type Assessment,
  type ReportExtras,
  type SignOff,
} from 'evendraft';
import { printPdf } from './print-pdf.js';
import { whyUnwritable } from './why-unwritable.js';
import { writableFile, writableFolder, writeWhole } from './write-whole.js';

/** Where each kind of report goes; what is absent is not written. */
export interface ReportTargets {
  /** Folder for the full report as Markdown and as JSON. */
  readonly out?: string;
  /** File of the page. */
  readonly report?: string;
  /** File of the printed page, and the browser that prints it. */
  readonly pdf?: { readonly file: string; readonly browser: string };
  /** Folder for the tables. */
  readonly csv?: string;
}

/** What the reports are made from beside the assessment. */
export interface ReportContent {
  readonly houseFile: string;
  readonly system: 'us' | 'si';
  readonly extras: ReportExtras;
  readonly signOff?: SignOff;
  /** Stops the print, which alone takes seconds. */
  readonly signal?: AbortSignal;
}

/** One report: what was asked for, where it went, or why it did not; or that it was stopped. */
export type WrittenReport =
  | { readonly flag: string; readonly paths: readonly string[] }
  | { readonly flag: string; readonly target: string; readonly problem: string }
  | { readonly flag: string; readonly target: string; readonly stopped: true };

/**
 * What is wrong with where reports are to go, as far as can be said before there is one.
 *
 * @param targets - what was asked for
 * @returns the first problem; nothing where none is seen
 */
export async function targetProblem({
  out,
  report,
  pdf,
  csv,
}: ReportTargets): Promise<
  { readonly flag: string; readonly target: string; readonly problem: string } | undefined
> {
  const asked = [
    { flag: '--out', target: out, check: writableFolder },
    { flag: '--report', target: report, check: checkFile },
    { flag: '--pdf', target: pdf?.file, check: checkFile },
    { flag: '--csv', target: csv, check: writableFolder },
  ];
  for (const { flag, target, check } of asked) {
    if (target === undefined) continue;
    if (target === '') return { flag, target, problem: 'no name was given' };
    try {
      await check(target);
    } catch (error) {
      return { flag, target, problem: whyUnwritable(error) };
    }
  }
  return undefined;
}

async function checkFile(path: string): Promise<void> {
  await writableFile(path);
  await writableFolder(dirname(resolve(path)));
}

/**
 * Writes every report that was asked for. Each file appears whole or not at all.
 *
 * Names come from the command line, the house file's own name on disk, or this program, never from
 * what stands in the house file.
 *
 * @param assessment - what to write
 * @param targets - what was asked for
 * @param content - units, block to sign, the house file's path, signal
 * @returns one entry a report, in the order Markdown and JSON, page, PDF, tables
 */
export async function writeReports(
  assessment: Assessment,
  targets: ReportTargets,
  content: ReportContent,
): Promise<readonly WrittenReport[]> {
  const { out, report, pdf, csv } = targets;
  const { system, extras, signOff, houseFile, signal } = content;
  const stem = basename(houseFile, extname(houseFile));
  const page = (): string =>
    renderHtml(assessment, { system, extras, ...(signOff === undefined ? {} : { signOff }) });
  const written: WrittenReport[] = [];
  const write = async (
    flag: string,
    target: string | undefined,
    files: (target: string) => Promise<readonly string[]>,
  ): Promise<void> => {
    if (target === undefined) return;
    try {
      written.push({ flag, paths: await files(target) });
    } catch (error) {
      written.push(
        signal?.aborted === true && error === signal.reason
          ? { flag, target, stopped: true }
          : { flag, target, problem: whyUnwritable(error) },
      );
    }
  };
  await write('--out', out, (folder) =>
    writeAll(folder, [
      { name: `${stem}.md`, text: renderMarkdown(assessment, { system }) },
      { name: `${stem}.json`, text: renderJson(assessment) },
    ]),
  );
  await write('--report', report, async (file) => {
    await writeWhole(file, page());
    return [file];
  });
  await write('--pdf', pdf?.file, async (file) => {
    await writeWhole(file, await printPdf(page(), pdf?.browser ?? '', signal));
    return [file];
  });
  await write('--csv', csv, (folder) =>
    writeAll(folder, renderCsv(assessment, { system, extras })),
  );
  return written;
}

async function writeAll(
  folder: string,
  files: readonly { readonly name: string; readonly text: string }[],
): Promise<readonly string[]> {
  const paths: string[] = [];
  for (const { name, text } of files) {
    const path = join(folder, name);
    await writeWhole(path, text);
    paths.push(path);
  }
  return paths;
}
