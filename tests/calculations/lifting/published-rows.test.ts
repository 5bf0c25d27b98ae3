import {testHeldRows} from '../../published-values/test-held-rows.ts'
import {agreements} from './agreements.ts'

testHeldRows(agreements)
