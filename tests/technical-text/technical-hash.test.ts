import {createHash} from 'node:crypto'
import {describe, expect, test} from 'vitest'
import {readCheckCode} from '../../src/browser-contract/check-symbol.ts'
import {checkCode, technicalHash} from '../../src/technical-text/technical-hash.ts'

describe('the technical hash', () => {
  test('is SHA-256 in hexadecimal digits', () => {
    // FIPS 180-2 appendix B.1, from memory; the same as `printf abc | sha256sum`.
    expect(technicalHash('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad')
  })

  test('is taken over the UTF-8 bytes', () => {
    const bytes = createHash('sha256').update(Uint8Array.of(0xc2, 0xb5)).digest('hex')
    expect(technicalHash('µ')).toBe(bytes)
  })
})

describe('the check code of a page', () => {
  const hash = technicalHash('abc')
  const code = checkCode('vessel-a/4s/wear', 3, hash)

  test('is eight letters and a check symbol that fits', () => {
    expect(code).toMatch(/^[0-9A-HJKMNP-TV-Z]{4}-[0-9A-HJKMNP-TV-Z]{4}-[0-9A-HJKMNP-TV-Z]$/u)
    expect(readCheckCode(code)).toEqual({code, sound: true})
  })

  test('holds the first forty bits of the hash over page id, revision and technical hash', () => {
    const bits = [...technicalHash(`vessel-a/4s/wear\n3\n${hash}`).slice(0, 10)]
      .map((digit) => Number.parseInt(digit, 16).toString(2).padStart(4, '0'))
      .join('')
    const letters = (bits.match(/.{5}/gu) ?? [])
      .map((five) => '0123456789ABCDEFGHJKMNPQRSTVWXYZ'.charAt(Number.parseInt(five, 2)))
      .join('')
    expect(code.replaceAll('-', '').slice(0, 8)).toBe(letters)
  })

  test('changes with the page, the revision and the technical text', () => {
    const others = [
      checkCode('vessel-a/4p/wear', 3, hash),
      checkCode('vessel-a/4s/wear', 4, hash),
      checkCode('vessel-a/4s/wear', 3, technicalHash('abd')),
    ]
    expect(new Set([code, ...others]).size).toBe(4)
  })

  test('keeps page id and revision apart, so that moving a digit gives another code', () => {
    expect(checkCode('a/1', 12, hash)).not.toBe(checkCode('a/11', 2, hash))
  })
})
