import type { Issue, IssuePath } from './issue.js';
import type { IssueCatalogue } from './issue-catalogue.js';
import { visibleControls } from './visible-controls.js';

/**
 * An issue as one line: `house.yaml:13:8: exhaust.hood.high: found "900", … Write 900 cfm.`
 *
 * What came from the text cannot steer a terminal: control characters are shown as `\u001b`. A code
 * that the catalogue lacks is printed with its parameters rather than lost.
 *
 * @param issue - what is wrong
 * @param catalogue - the words for it
 * @returns place, path, message and hint, without a line end
 */
export function formatIssue(issue: Issue, catalogue: IssueCatalogue): string {
  const entry = catalogue.get(issue.code);
  const message = entry?.message(issue.parameters) ?? unknownCode(issue);
  const hint = entry?.hint?.(issue.parameters);
  const parts = [
    place(issue),
    issue.severity === 'warning' ? 'warning' : '',
    formatPath(issue.path),
    hint === undefined ? `${message}.` : `${message}. ${hint}`,
  ];
  return visibleControls(parts.filter((part) => part !== '').join(': '));
}

function place({ file, position }: Issue): string {
  const name = file ?? '';
  return position ? `${name}${name && ':'}${position.line}:${position.column}` : name;
}

/** `exhaust.hall bath.flow`, `openings[2].area`; a key that holds a dot or a bracket is quoted. */
function formatPath(path: IssuePath): string {
  return path
    .map((step, index) => {
      if (typeof step === 'number') return `[${step}]`;
      const key = /[.[\]":]|^$/.test(step) ? JSON.stringify(step) : step;
      return index === 0 ? key : `.${key}`;
    })
    .join('');
}

function unknownCode({ code, parameters }: Issue): string {
  return Object.keys(parameters).length === 0 ? code : `${code} ${JSON.stringify(parameters)}`;
}
