// Finds the browsers and PDF tools that the tests drive; installs them from Debian's packages when it may, else says what to install.

import {spawnSync} from 'node:child_process'
import {accessSync, constants} from 'node:fs'
import {delimiter, join} from 'node:path'
import {fileURLToPath} from 'node:url'

const needed = [
  {names: ['chromium', 'chromium-browser', 'google-chrome'], package: 'chromium'},
  {names: ['firefox-esr', 'firefox'], package: 'firefox-esr'},
  {names: ['pdftotext'], package: 'poppler-utils'},
  {names: ['pdfinfo'], package: 'poppler-utils'},
  {names: ['fc-match'], package: 'fontconfig'},
]

/** Path of the first of the named programs, or undefined. */
export function findProgram(names) {
  for (const name of names) {
    for (const folder of (process.env.PATH ?? '').split(delimiter)) {
      const path = join(folder, name)
      try {
        accessSync(path, constants.X_OK)
        return path
      } catch {
        // not here: the next folder
      }
    }
  }
  return undefined
}

/** Chromium and Firefox by path, installed when missing; throws with the remedy when that cannot be done. */
export function ensureBrowsers() {
  const missing = () => [
    ...new Set(needed.filter((one) => !findProgram(one.names)).map((one) => one.package)),
  ]
  if (missing().length > 0) {
    const packages = [...missing(), 'fonts-liberation']
    if (process.getuid?.() !== 0 || !findProgram(['apt-get'])) {
      throw new Error(
        `The tests need programs that are missing. Install them: apt-get install --no-install-recommends ${packages.join(' ')}`,
      )
    }
    for (const words of [['update'], ['install', '-y', '--no-install-recommends', ...packages]]) {
      const run = spawnSync('apt-get', words, {
        stdio: ['ignore', 'ignore', 'inherit'],
        env: {...process.env, DEBIAN_FRONTEND: 'noninteractive'},
      })
      if (run.status !== 0)
        throw new Error(`apt-get ${words.join(' ')} failed. Install by hand: ${packages.join(' ')}`)
    }
    if (missing().length > 0) throw new Error(`Still missing after the installation: ${missing().join(', ')}`)
  }
  return {chromium: findProgram(needed[0].names), firefox: findProgram(needed[1].names)}
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  try {
    process.stdout.write(`${JSON.stringify(ensureBrowsers())}\n`)
  } catch (error) {
    process.stderr.write(`${error.message}\n`)
    process.exitCode = 3
  }
}
