export { aboutOf, sayCheck, type Speech } from "./checks.ts";
export { sayLengthFault, sayWanted } from "./problems.ts";
export { sayStepName, saySum } from "./reckoning.ts";
export { type Language, VOCABULARY, type Vocabulary } from "./vocabulary.ts";
