/** What a stretch of a TypeScript text is. */
type Stretch = 'code' | 'comment' | 'text' | 'pattern'

/**
 * A TypeScript text with its comments, strings and patterns blanked out, line for line, so that a word
 * found in it is code. What stands between `${` and `}` of a template string is code too.
 */
export function codeWithoutWords(text: string): string {
  const depths: number[] = []
  let out = ''
  let at = 0
  let depth = 0
  const take = (length: number, what: Stretch): void => {
    const piece = text.slice(at, at + length)
    out += what === 'code' ? piece : piece.replace(/[^\n]/gu, ' ')
    at += length
  }
  while (at < text.length) {
    const rest = text.slice(at)
    const next = text.charAt(at)
    if (rest.startsWith('//')) take(lengthOf(/^[^\n]*/u, rest), 'comment')
    else if (rest.startsWith('/*')) take(lengthOf(/^\/\*[\s\S]*?\*\//u, rest), 'comment')
    else if (next === "'" || next === '"') take(lengthOf(/^(['"])(?:\\[\s\S]|(?!\1)[^\\])*\1/u, rest), 'text')
    else if (next === '/' && startsPattern(out))
      take(lengthOf(/^\/(?:\\.|\[(?:\\.|[^\]\\])*\]|[^/\\[])+\/[a-z]*/u, rest), 'pattern')
    else if (next === '`' || (next === '}' && depths.at(-1) === depth)) {
      if (next === '}') depths.pop()
      const length = lengthOf(/^.(?:\\[\s\S]|\$(?!\{)|[^`\\$])*(?:`|\$\{)/su, rest)
      const opens = rest.slice(0, length).endsWith('${')
      take(length, 'text')
      if (opens) depths.push(depth)
    } else {
      if (next === '{') depth += 1
      if (next === '}') depth -= 1
      take(1, 'code')
    }
  }
  return out
}

/** A slash begins a pattern unless a value stands before it. */
function startsPattern(before: string): boolean {
  return /(?:^|[=(,:;!&|?{}[\n>]|\breturn)\s*$/u.test(before)
}

function lengthOf(pattern: RegExp, text: string): number {
  return Math.max(1, pattern.exec(text)?.[0].length ?? 1)
}
