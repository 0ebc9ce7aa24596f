/** The codes of every issue that reading a text can raise; `textIssues` has their words and remedies. */
export type TextIssueCode =
  // Ceilings and characters
  | 'text.too-large'
  | 'text.too-deep'
  | 'text.too-many-values'
  | 'text.too-long-value'
  | 'text.not-utf-8'
  | 'text.control-character'
  | 'text.more-issues'
  // The whole
  | 'text.empty'
  | 'text.bare-value'
  // What YAML offers and a house file does not need
  | 'text.tag'
  | 'text.anchor'
  | 'text.merge-key'
  | 'text.several-documents'
  | 'text.directive'
  // Keys
  | 'text.duplicate-key'
  | 'text.reserved-key'
  | 'text.empty-key'
  | 'text.complex-key'
  | 'text.key-too-long'
  | 'text.key-spans-lines'
  // Values
  | 'text.number-form'
  | 'text.not-finite'
  | 'text.inexact-number'
  | 'text.number-split-by-comma'
  | 'text.space-after-colon'
  | 'text.colon-in-value'
  // Syntax
  | 'text.tab'
  | 'text.indent'
  | 'text.unclosed'
  | 'text.comma-missing'
  | 'text.comma-unexpected'
  | 'text.colon-missing'
  | 'text.reserved-start'
  | 'text.escape'
  | 'text.comment-space'
  | 'text.block-in-flow'
  | 'text.syntax'
  // Tables
  | 'text.csv-quote'
  | 'text.csv-cells'
  | 'text.csv-column'
  // JSON
  | 'text.json-comment'
  | 'text.json-trailing-comma'
  | 'text.json-quotes'
  | 'text.json-word'
  | 'text.json-number'
  | 'text.json-syntax';
