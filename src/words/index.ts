export { aboutOf, sayCheck, type Speech } from "./checks.ts";
export { sayLengthFault, sayWanted } from "./problems.ts";
export { type Ink, sayStepName, saySum, writeStepSum } from "./reckoning.ts";
export { type Language, VOCABULARY, type Vocabulary } from "./vocabulary.ts";
export { briefRuns, briefText } from "./brief.ts";
export { CHECK_LIST_HEAD, type CheckListWork, checkListRows } from "./check-list.ts";
export { dateWords, shortDate } from "./dates.ts";
export { articleOf, figureWords, ordinal, wholeWords } from "./figures.ts";
export {
  bare,
  count,
  figureRuns,
  flat,
  NBSP,
  type Phrase,
  plainText,
  readOff,
  bold,
  runs,
  sentence,
  sizeRuns,
  strong,
  weighted,
  withUnit,
} from "./runs.ts";
