import {createHash} from 'node:crypto'
import {checkSymbol, codeLetters, printCheckCode} from '../browser-contract/check-symbol.ts'

/** SHA-256 of a technical text, as hexadecimal digits. */
export function technicalHash(technicalText: string): string {
  return createHash('sha256').update(technicalText, 'utf8').digest('hex')
}

/**
 * Check code of a page: the first forty bits of SHA-256 over page id, revision and technical hash, and a check symbol.
 *
 * Only the whole revision counts: an editorial letter keeps the code.
 */
export function checkCode(pageId: string, revision: number, hash: string): string {
  const digest = createHash('sha256').update(`${pageId}\n${revision}\n${hash}`, 'utf8').digest()
  let bits = 0n
  for (const byte of digest.subarray(0, 5)) bits = (bits << 8n) | BigInt(byte)
  let letters = ''
  for (let index = 7; index >= 0; index -= 1)
    letters += codeLetters.charAt(Number((bits >> BigInt(index * 5)) & 31n))
  return printCheckCode(letters + checkSymbol(letters))
}
