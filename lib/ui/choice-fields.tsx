import type { QuestionId } from "../trade/questions";
import { Choice } from "./choice";
import { pictureOf } from "./pictures";
import { wordingOf } from "./wording";
import type { StepProps } from "./step-props";

/** A question of the table with its answers as cards. */
export function ChoiceFields({ question, answers, words }: StepProps & { question: QuestionId }) {
  const { kind, ask, hint, options } = wordingOf(question, answers, words);
  return (
    <Choice
      name="answer" kind={kind} legend={<h1>{ask}</h1>} hint={hint}
      options={options.map((o) => ({ ...o, picture: pictureOf(question, o.id) }))}
    />
  );
}
