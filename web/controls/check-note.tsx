import './check-note.css';
import { say } from './wording.ts';
/** What a score is and is not; stands wherever one is shown. */
export function PracticeNote() {
  return <p class="practice-note small">{say.checkNote.thisIsForPractice}</p>;
}
