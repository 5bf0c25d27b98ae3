// Small changes of a TypeScript source, each of which a test has to notice, and one text that holds them all behind a switch.

import {parseAst} from 'vitest/node'

/** Operators and what stands in for them. */
const binary = {
  '+': ['-'],
  '-': ['+'],
  '*': ['/'],
  '/': ['*'],
  '%': ['*'],
  '**': ['*'],
  '<': ['<=', '>='],
  '<=': ['<', '>'],
  '>': ['>=', '<='],
  '>=': ['>', '<'],
  '===': ['!=='],
  '!==': ['==='],
}
const logical = {'&&': '||', '||': '&&'}
const assignment = {'+=': '-=', '-=': '+=', '*=': '/=', '/=': '*='}

/** Functions of Math and lists that stand in for each other. */
const calls = {
  min: 'max',
  max: 'min',
  sin: 'cos',
  cos: 'sin',
  floor: 'ceil',
  ceil: 'floor',
  round: 'floor',
  some: 'every',
  every: 'some',
}

/** Functions of Math that are taken away, so that what they are given is left. */
const takenAway = new Set(['sqrt', 'abs', 'tan', 'atan', 'acos', 'log', 'exp', 'sign'])

/** Functions of lists that are taken away, so that the whole list is left in its order. */
const ofLists = new Set(['filter', 'sort'])

const loops = new Set(['ForStatement', 'ForOfStatement', 'WhileStatement'])

/**
 * Mutants of a source, in the order of their places: `{start, end, text}` with the text that stands in for what is between.
 *
 * Words are left alone: types, what is put into an error, and texts.
 */
export function mutantsOf(source) {
  return changesOf(source).filter(({kind}) => kind !== 'turn')
}

/** The mutants, and a `turn` for the body of each loop. */
function changesOf(source) {
  const mutants = []
  const add = (node, text, kind = 'expression') =>
    mutants.push({start: node.start, end: node.end, text, kind})
  const of = (node) => source.slice(node.start, node.end)
  /** The same with another operator; parentheses stand between the operands too. */
  const withOperator = ({start, left, operator, right, end}, other) =>
    source.slice(start, left.end) +
    source.slice(left.end, right.start).replace(operator, other) +
    source.slice(right.start, end)

  const own = {
    BinaryExpression(node) {
      // A sum of texts is words.
      if (node.operator === '+' && (isText(node.left) || isText(node.right))) return
      for (const operator of binary[node.operator] ?? []) add(node, withOperator(node, operator))
    },
    LogicalExpression(node) {
      if (logical[node.operator]) add(node, withOperator(node, logical[node.operator]))
      add(node, of(node.left))
      add(node, of(node.right))
    },
    ConditionalExpression(node) {
      add(node, of(node.consequent))
      add(node, of(node.alternate))
    },
    IfStatement(node) {
      // A refusal that always or never comes is the same as one that is dropped.
      if (node.consequent.type === 'ThrowStatement') return
      add(node.test, 'true')
      add(node.test, 'false')
    },
    UnaryExpression(node) {
      if (node.operator === '-' || node.operator === '!') add(node, of(node.argument))
    },
    Literal(node) {
      if (typeof node.value === 'boolean') add(node, String(!node.value))
      if (typeof node.value !== 'number') return
      add(node, nearBy(node.value))
      if (node.value !== 0) add(node, '0')
    },
    CallExpression(node) {
      const {callee} = node
      if (callee.type !== 'MemberExpression' || callee.computed) return
      const name = callee.property.name
      const ofMath = callee.object.type === 'Identifier' && callee.object.name === 'Math'
      const listWord = name === 'some' || name === 'every'
      if (ofLists.has(name)) add(node, of(callee.object))
      if (calls[name] && (ofMath || listWord))
        add(
          node,
          `${source.slice(node.start, callee.property.start)}${calls[name]}${source.slice(callee.property.end, node.end)}`,
        )
      if (ofMath && takenAway.has(name) && node.arguments.length === 1) add(node, of(node.arguments[0]))
    },
    ThrowStatement(node) {
      add(node, '', 'statement')
    },
    ForStatement({update}) {
      const other = update?.type === 'AssignmentExpression' && assignment[update.operator]
      if (other) add(update, withOperator(update, other))
    },
    ExpressionStatement(node) {
      const {expression} = node
      if (expression.type === 'CallExpression') add(node, '', 'statement')
      const other = expression.type === 'AssignmentExpression' && assignment[expression.operator]
      if (other) add(node, withOperator(expression, other), 'assignment')
    },
  }

  const visit = (node, parent) => {
    if (!node || typeof node.type !== 'string' || isWords(node, parent)) return
    own[node.type]?.(node)
    if (loops.has(node.type)) add(node.body, '', 'turn')
    for (const [key, child] of Object.entries(node)) {
      if (key === 'typeAnnotation' || key === 'returnType' || key === 'typeArguments') continue
      if ((key === 'key' || key === 'property') && !node.computed) continue
      for (const one of Array.isArray(child) ? child : [child])
        if (one && typeof one === 'object') visit(one, node)
    }
  }
  visit(parseAst(source, {lang: 'ts'}), undefined)
  return mutants.sort((a, b) => a.start - b.start || b.end - a.end)
}

/** One more of a count; a hundredth more of a figure; a margin so wide that it lets everything through. */
function nearBy(value) {
  return String(Number.isInteger(value) || Math.abs(value) < 1e-3 ? value + 1 : value * 1.01)
}

function isText(node) {
  return (node.type === 'Literal' && typeof node.value === 'string') || node.type === 'TemplateLiteral'
}

/** Types, imports, and what an error says. */
function isWords(node, parent) {
  if (node.type.startsWith('TS'))
    return node.type !== 'TSAsExpression' && node.type !== 'TSSatisfiesExpression'
  if (node.type === 'ImportDeclaration') return true
  return (
    parent?.type === 'NewExpression' && /Error$/u.test(parent.callee.name ?? '') && node !== parent.callee
  )
}

/**
 * The source with all mutants in it; the one whose number is `__mutant` is in force, the first has the number `first`.
 *
 * Each turn of a loop calls `__turn`, so that a loop that does not end can be stopped after a number of turns.
 */
export function withAllMutants(source, first) {
  let number = first
  const numbered = changesOf(source).map((one) => (one.kind === 'turn' ? one : {...one, number: number++}))
  return `${render(source, 0, source.length, numbered)}\n`
}

function render(source, start, end, mutants) {
  let text = ''
  let at = start
  let rest = mutants
  while (rest.length > 0) {
    const [outer] = rest
    const same = rest.filter((one) => one.start === outer.start && one.end === outer.end)
    const inside = rest.filter(
      (one) => !same.includes(one) && one.start >= outer.start && one.end <= outer.end,
    )
    const whole = render(source, outer.start, outer.end, inside)
    text += source.slice(at, outer.start) + switched(same, whole)
    at = outer.end
    rest = rest.filter((one) => !same.includes(one) && !inside.includes(one))
  }
  return text + source.slice(at, end)
}

function switched(changes, whole) {
  const mutants = changes.filter(({kind}) => kind !== 'turn')
  const inner = mutants.length > 0 ? choiceOf(mutants, whole) : whole
  return mutants.length < changes.length ? `{ __turn(); ${inner} }` : inner
}

function choiceOf(mutants, whole) {
  const [{kind, number, text: assigned}] = mutants
  if (mutants.some((one) => one.kind !== kind))
    throw new Error(`Unexpected kinds of change for \`${whole}\`, expected one kind`)
  if (kind === 'statement') return `{ if (__mutant !== ${number}) { ${whole} } }`
  if (kind === 'assignment') return `{ if (__mutant === ${number}) { ${assigned} } else { ${whole} } }`
  const choices = mutants.map(({number, text}) => `__mutant === ${number} ? (${text}) : `)
  return `(${choices.join('')}(${whole}))`
}
