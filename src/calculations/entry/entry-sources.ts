import type {NotedSource} from '../calculation-note.ts'

/** Recommendations for entering enclosed spaces: the superseded ones that were read, and what replaced them. */
export const entryRecommendations: readonly NotedSource[] = [
  {
    title: 'IMO resolution A.1050(27), recommendations for entering enclosed spaces, section 7',
    edition: '2011',
    howKnown: 'read',
    status: 'superseded',
  },
  {
    title:
      'IMO resolution MSC.581(110), that it replaces A.1050(27) and asks for less than 0.5 % of carbon dioxide; its other figures not read',
    edition: 'as told by secondary pages',
    howKnown: 'reprint',
    status: 'current',
  },
]
