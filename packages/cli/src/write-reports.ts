import { basename, extname, join } from 'node:path';
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
import { writeWhole } from './write-whole.js';

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
          : { flag, target, problem: whyNot(error) },
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

function whyNot(error: unknown): string {
  if (!(error instanceof Error)) return 'unknown reason';
  return 'code' in error ? String(error.code) : error.message;
}
