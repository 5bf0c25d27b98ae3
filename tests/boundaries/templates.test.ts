import Handlebars from 'handlebars'
import {describe, expect, test} from 'vitest'
import {filesIn} from './source-files.ts'

const templates = filesIn('templates', '.hbs')

/** Helpers a template may use: they choose and repeat, and one prints bound text. None computes or compares. */
const allowedHelpers = ['if', 'unless', 'each', 'with', 'lookup', 'rich', 'each-box', 'each-row']

/** Raw blocks that hold drawings made by `src/figures`, the data of one that is drawn again, or the styles of a page that is one file. */
const allowedRaw = ['page.plan.svg', 'figure.svg', 'json', 'styles']

/** Names of all helpers called with arguments or as blocks, and of all raw values, of a template. */
function usesOf(text: string): {readonly helpers: readonly string[]; readonly raw: readonly string[]} {
  const helpers: string[] = []
  const raw: string[] = []
  const visitor = new Handlebars.Visitor()
  visitor.MustacheStatement = (statement) => {
    if ('original' in statement.path && statement.params.length > 0)
      helpers.push(String(statement.path.original))
    if (!statement.escaped && 'original' in statement.path) raw.push(String(statement.path.original))
    Handlebars.Visitor.prototype.MustacheStatement.call(visitor, statement)
  }
  visitor.BlockStatement = (statement) => {
    if ('original' in statement.path) helpers.push(String(statement.path.original))
    Handlebars.Visitor.prototype.BlockStatement.call(visitor, statement)
  }
  visitor.SubExpression = (expression) => {
    if ('original' in expression.path) helpers.push(String(expression.path.original))
    Handlebars.Visitor.prototype.SubExpression.call(visitor, expression)
  }
  visitor.accept(Handlebars.parse(text))
  return {helpers, raw}
}

describe('templates', () => {
  test('use only helpers that choose, repeat or print, so that no number is made in them', () => {
    expect(templates.length).toBeGreaterThan(20)
    const used = templates.flatMap(({path, text}) => usesOf(text).helpers.map((helper) => ({path, helper})))
    expect(used.length).toBeGreaterThan(50)
    expect(used.filter(({helper}) => !allowedHelpers.includes(helper))).toEqual([])
  })

  test('print raw nothing but drawings, the data they are made from and the styles of a page that is one file', () => {
    const raw = templates.flatMap(({path, text}) => usesOf(text).raw.map((name) => ({path, name})))
    expect(raw.filter(({name}) => !allowedRaw.includes(name))).toEqual([])
  })

  test('write no unit of their own: figure and unit come ready to print', () => {
    const units = /(?:\}\}|\d)\s*(?:mm|bar|N·m|kN|kg|min|°C|l\/min|%)(?![\w-])/u
    for (const {path, text} of templates) expect(units.exec(text)?.[0], path).toBeUndefined()
  })

  test('hold no script of their own but data, and no address of the network', () => {
    for (const {path, text} of templates) {
      expect(text, path).not.toMatch(/<script(?![^>]*\b(?:src=|type="application\/json"))/u)
      expect(text, path).not.toMatch(/\son[a-z]+=/u)
      expect(text.replaceAll('http://www.w3.org/', ''), path).not.toMatch(/https?:\/\//u)
    }
  })

  test('are scanned down to nested expressions', () => {
    expect(usesOf('{{#if (plus a 1)}}{{{b}}}{{minus c 2}}{{/if}}')).toEqual({
      helpers: ['if', 'plus', 'minus'],
      raw: ['b'],
    })
  })
})
