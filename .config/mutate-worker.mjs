// Runs bundled tests once for each mutant that it is sent and tells which test noticed it, if one did.

import {readFileSync} from 'node:fs'
import {parentPort, workerData} from 'node:worker_threads'
import fc from 'fast-check'
import * as vitest from './mutate-vitest.mjs'

const {takeTests} = vitest

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
    files.set(path, new AsyncFunction('others', '__mutant', '__turn', text))
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

/** How many turns of all loops each step may take at most: by bundle, loading it and then its tests. */
const mostTurns = workerData ?? {}

/** The test that fails, if one does; else the turns that all loops took, as they are counted in `mostTurns`. */
async function runTests({mutant, bundles}) {
  const taken = {}
  for (const path of bundles) {
    const turns = []
    taken[path] = turns
    const step = async (what, body) => {
      const most = mostTurns[path]?.[turns.length] ?? Number.POSITIVE_INFINITY
      let count = 0
      const turn = () => {
        count += 1
        if (count > most) throw new Error('Unexpected loop without end')
      }
      const failure = await failureOf(() => body(turn))
      turns.push(count)
      // A test that expects an error takes the one above for it.
      if (count > most) return `${what}: it does not end`
      return failure === undefined ? undefined : `${what}: ${failure}`
    }
    let turnNow = () => undefined
    const run = await bundleOf(path)
    takeTests()
    let noticed = await step('loading', (turn) => {
      turnNow = turn
      return run(others, mutant, () => turnNow())
    })
    for (const {name, body} of takeTests()) {
      if (noticed !== undefined) break
      noticed = await step(name, (turn) => {
        turnNow = turn
        return body()
      })
    }
    if (noticed !== undefined) return {noticed}
  }
  return {turns: taken}
}

/** First line of the error of a test that fails. */
async function failureOf(body) {
  try {
    await body()
    return undefined
  } catch (error) {
    return String(error?.message).split('\n', 1)[0]
  }
}

parentPort.on('message', async (job) => {
  parentPort.postMessage(await runTests(job))
})
parentPort.postMessage('ready')
