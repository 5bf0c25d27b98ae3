const deepestBrackets = 100
const deepestIndentation = 200

/**
 * Line and column at which YAML text nests deeper than content ever does; undefined for other text.
 *
 * The parser calls itself for each level, so that a long row of brackets would
 * end the whole run. Brackets inside quotes are counted too: nobody writes a
 * hundred of them that do not close.
 */
export function placeOfDeepNesting(text: string): {line: number; column: number} | undefined {
  let brackets = 0
  for (const [index, line] of text.split('\n').entries()) {
    const indentation = /^(?:[\t \r]|[-?:](?=[\t \r]))*/u.exec(line)?.[0].length ?? 0
    if (indentation > deepestIndentation) return {line: index + 1, column: deepestIndentation + 1}
    for (let at = 0; at < line.length; at += 1) {
      const letter = line[at]
      if (letter === '[' || letter === '{') brackets += 1
      else if ((letter === ']' || letter === '}') && brackets > 0) brackets -= 1
      if (brackets > deepestBrackets) return {line: index + 1, column: at + 1}
    }
  }
  return undefined
}
