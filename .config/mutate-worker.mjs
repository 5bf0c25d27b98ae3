// Runs bundled tests once for each mutant that it is sent and tells which test noticed it, if one did.

import {readFileSync} from 'node:fs'
import fc from 'fast-check'
import * as vitest from './mutate-vitest.mjs'

// The same inputs in every run, and no search for a smaller one: a mutant is noticed or not.
fc.configureGlobal({seed: 20_310_214, endOnFailure: true})

const others = {vitest, 'fast-check': {default: fc}}
const files = new Map()

/** A bundle as a function of the mutant in force. */
async function bundleOf(path) {
  if (!files.has(path)) {
    const body = readFileSync(path, 'utf8')
    const taken = [...body.matchAll(/^import (.+) from "([^"]+)";$/gmu)]
    for (const [, , name] of taken) others[name] ??= await import(name)
    const text = body
      .replace(
        /^import (.+) from "([^"]+)";$/gmu,
        (_, names, name) => `const ${named(names)} = others["${name}"];`,
      )
      .replace(/^export \{[^}]*\};?$/gmu, '')
    files.set(path, new AsyncFunction('others', '__mutant', text))
  }
  return files.get(path)
}

const AsyncFunction = (async () => {}).constructor

/** `fc, { a as b }` of an import as the names of a destructuring. */
function named(names) {
  const [, whole = '', parts = ''] = /^([^{,]*),?\s*(?:\{(.*)\})?$/su.exec(names) ?? []
  const list = parts.split(',').flatMap((part) => {
    const [from, to] = part.trim().split(' as ')
    return from === '' ? [] : [to ? `${from}: ${to}` : from]
  })
  if (whole.startsWith('* as ')) return whole.slice(5).trim()
  return `{${[...(whole.trim() === '' ? [] : [`default: ${whole.trim()}`]), ...list].join(', ')}}`
}

/** Name of the test that fails, or undefined when all pass. */
async function firstFailure(path, mutant) {
  const run = await bundleOf(path)
  vitest.takeTests()
  try {
    await run(others, mutant)
  } catch (error) {
    return `loading: ${error.message}`
  }
  for (const {name, body} of vitest.takeTests()) {
    try {
      await body()
    } catch (error) {
      return `${name}: ${String(error.message).split('\n', 1)[0]}`
    }
  }
  return undefined
}

process.on('message', async ({mutant, bundles}) => {
  for (const path of bundles) {
    const noticed = await firstFailure(path, mutant)
    if (noticed !== undefined) {
      process.send({mutant, noticed})
      return
    }
  }
  process.send({mutant})
})
process.send({ready: true})
