import {contractVersion} from '../browser-contract/page-contract.ts'
import {startSheets} from './lay-out-sheets.ts'
import {startPalettes} from './palette-buttons.ts'
import {startUrgentDays} from './urgent-days.ts'

/** Starts what a page offers with scripts; a fault leaves the page as it reads without them. */
try {
  if (document.body.getAttribute('data-contract') === String(contractVersion)) {
    startUrgentDays()
    startPalettes()
    startSheets()
    document.documentElement.classList.add('app-ok')
  }
} catch {
  document.documentElement.classList.remove('app-ok')
}
