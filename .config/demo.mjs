// README command one: compiles the program and builds the demonstration handbooks.
import {spawnSync} from 'node:child_process'
import {compile} from './compile.mjs'

await compile()
const root = new URL('..', import.meta.url).pathname
const run = spawnSync(process.execPath, ['.build/cli.js', 'build', ...process.argv.slice(2)], {
  cwd: root,
  stdio: 'inherit',
})
process.exitCode = run.status ?? 3
