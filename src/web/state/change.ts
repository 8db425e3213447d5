/** Changes are values of the show: the page makes, takes back and sends the same ones that the server keeps. */
export {
  type Act,
  type Applied,
  apply,
  type Change,
  designChange,
  exactly,
  factsChange,
  inverse,
  type KeptShow,
  type KeptWork,
  type Patch,
  practiceChange,
  sameJson,
  showChange,
  upon,
} from "../../show/index.ts";
