import {symlinkSync} from 'node:fs'
import {checkCode} from '../../../src/technical-text/technical-hash.ts'
import {ledgerWith} from '../../issues/ledger-for-tests.ts'
import {type Change, type RuleCase, replaced, unchanged} from './rule-case.ts'

const parts = 'parts.yaml'
const terms = 'terms.yaml'
const cargoes = 'tables/cargoes.csv'
const procedure = 'procedures/ring-check.md'
const ledger = 'issues/vessel-s/2031-03.json'

function paddedTo(bytes: number): Change {
  return (content) => {
    const text = content.read(terms)
    content.write(terms, `${text}# ${'x'.repeat(bytes - text.length - 3)}\n`)
  }
}

function partsSavedAs(encoding: 'utf8' | 'latin1'): Change {
  return (content) =>
    content.write(
      parts,
      Buffer.from(content.read(parts).replace('locking plates', 'locking pläte'), encoding),
    )
}

function partsLinkedTo(target: string): Change {
  return (content) => {
    content.write('.parts', content.read(parts))
    content.remove(parts)
    symlinkSync(target, content.path(parts))
  }
}

function ledgerOf(revision: number): Change {
  const id = 'vessel-s/1p/values'
  const hash = 'a'.repeat(64)
  const page = {revision, date: '2031-03-14', code: checkCode(id, 1, hash), hash, path: 'p/1p/values.html'}
  const text = JSON.stringify(ledgerWith({[id]: page}, {vessel: 'vessel-s'}))
  return (content) => content.write(ledger, text)
}

/** Rules of reading: what a file must be before anybody can look at what it says. */
export const readingCases: readonly RuleCase[] = [
  {
    rule: 'no-missing-content',
    what: 'a file that every handbook needs is not there',
    accepted: unchanged,
    rejected: (content) => content.remove(terms),
    at: ['.'],
    reason: 'Unexpected content without `terms.yaml`, expected the file',
    mend: 'Write terms.yaml',
  },
  {
    rule: 'no-unreadable-file',
    what: 'a file that cannot be opened',
    accepted: partsLinkedTo('.parts'),
    rejected: partsLinkedTo('.part'),
    at: [parts],
    reason: 'Unexpected file that cannot be read (ENOENT), expected a readable file',
    mend: 'Give yourself the right to read it',
  },
  {
    rule: 'no-foreign-encoding',
    what: 'a letter beyond ASCII in another encoding',
    accepted: partsSavedAs('utf8'),
    rejected: partsSavedAs('latin1'),
    at: [parts, '\uFFFD'],
    reason: 'Unexpected byte that is not UTF-8, expected a UTF-8 text file',
    mend: 'Save the file as UTF-8 in the editor',
  },
  {
    rule: 'no-oversized-file',
    what: 'one byte more than a megabyte',
    accepted: paddedTo(1_000_000),
    rejected: paddedTo(1_000_001),
    at: [terms],
    reason: 'Unexpected size of 1000001 bytes, expected at most 1000000',
    mend: 'Split the file',
  },
  {
    rule: 'no-yaml-fault',
    what: 'a tab as indentation',
    accepted: replaced(terms, /^ {2}- /mu, '    - '),
    rejected: replaced(terms, /^ {2}- /mu, '\t- '),
    at: [terms, '\t'],
    reason: 'Unexpected tab as indentation, expected blanks',
    mend: 'Indent with two blanks for each level',
  },
  {
    rule: 'no-yaml-alias',
    what: 'a text that begins with the sign of an anchor',
    accepted: replaced(terms, /meaning: [^,]*/u, 'meaning: "&gap"'),
    rejected: replaced(terms, /meaning: [^,]*/u, 'meaning: &gap gas'),
    at: [terms, 'gas, '],
    reason: 'Unexpected anchor or alias, expected every value written out',
    mend: 'Write the value at each place that needs it, or refer to it by id',
  },
  {
    rule: 'no-csv-fault',
    what: 'a comma in a cell',
    accepted: replaced(cargoes, 'Gas oil', '"Gas oil, light"'),
    rejected: replaced(cargoes, 'Gas oil', 'Gas oil, light'),
    at: [cargoes, 'gas-oil'],
    reason: 'Unexpected row of 10 cells, expected 9 as in the header',
    mend: 'Give the row one cell for each column; put a cell that holds a comma in quotes',
    see: [cargoes, 'id,title'],
  },
  {
    rule: 'no-markdown-fault',
    what: 'a block inside a step that no sheet can print',
    accepted: replaced(procedure, 'The locking plates are bent', '*The locking plates* are bent'),
    rejected: replaced(procedure, 'The locking plates are bent', '> The locking plates are bent'),
    at: [procedure, '> The'],
    reason: 'Unexpected blockquote inside a step, expected a note or a directive',
    mend: 'Write alternatives as a list inside `:::one-of`, and all else as notes of the step',
  },
  {
    rule: 'no-stray-file',
    what: 'a file of a kind that no content has',
    accepted: (content) => content.write('.notes.docx', 'x'),
    rejected: (content) => content.write('notes.docx', 'x'),
    at: ['notes.docx'],
    reason: 'Unexpected file `notes.docx`, expected .yaml, .csv, or .md in procedures',
    mend: 'Move the file out of the content folder',
  },
  {
    rule: 'no-damaged-ledger',
    what: 'a field of a ledger changed by hand',
    accepted: ledgerOf(1),
    rejected: ledgerOf(0),
    at: [ledger],
    reason:
      'Unexpected field `pages.vessel-s/1p/values.revision` in the ledger, expected a ledger of version `1`',
    mend: 'Take the file again from the commit of that issue: a ledger is never edited',
  },
]
