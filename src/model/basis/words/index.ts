export { GLOSSARY, glossaryText, unitText } from './glossary.ts'
export { saysInvented } from './invented.ts'
export { likePlaces, likest } from './likeness.ts'
export {
  type Place,
  type Problem,
  ProblemError,
  fewAndShort,
  messageIn,
  problemSentence,
  said,
  stop,
} from './problem.ts'
export { type SheetLine, line } from './sheet-words.ts'
export { figureText, flowText, wordingText } from './wording-text.ts'
export { type Figure, type Text, type Wording, count, figure, sentenceCase, short, words } from './wording.ts'
