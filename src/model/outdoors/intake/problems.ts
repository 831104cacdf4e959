import type { Place, Problem } from '#model/basis/words'
import type { OpenQuestion } from './question.ts'

/** Collects what went wrong while one file is read; every entry knows its file. */
export class ProblemList {
  readonly file: string
  readonly list: Problem[] = []
  readonly questions: OpenQuestion[] = []

  constructor(file: string) {
    this.file = file
  }

  /** Something that stops the work. */
  error(code: string, message: string, remedy: string, place: Place = {}): void {
    this.list.push({ code, severity: 'error', message, remedy, place: { file: this.file, ...place } })
  }

  /** Something the user should know; the work goes on. */
  warn(code: string, message: string, remedy: string, place: Place = {}): void {
    this.list.push({ code, severity: 'warning', message, remedy, place: { file: this.file, ...place } })
  }

  /** Something nobody but the user can settle. */
  ask(question: OpenQuestion): void {
    this.questions.push(question)
  }

  get stopped(): boolean {
    return this.list.some((problem) => problem.severity === 'error')
  }
}
