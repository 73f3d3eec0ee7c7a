import type { AnswerRow } from "./question-row";
import type { QuestionId } from "./questions";

/**
 * How a question reads to somebody who cleans rugs for a living and asks about a customer's rug. What is not here
 * reads the same for everybody. The answers and their meaning do not change.
 */
export interface TradeWording {
  readonly ask?: string;
  readonly hint?: string;
  readonly answers?: Readonly<Record<string, AnswerRow>>;
}

export const WORDING_FOR_TRADE: Partial<Record<QuestionId, TradeWording>> = {
  sellerSaid: { ask: "What was it sold to your customer as?", hint: "On the invoice, or as your customer tells it. Not what you think it is." },
  boughtWhere: { ask: "Where did your customer get it?" },
  treatments: { ask: "What has been done to it so far?", hint: "Choose everything, before it came to you too. Nobody here will scold you." },
  treatedBy: {
    answers: {
      owner: { label: "My customer did, at home" },
      cleaner: { label: "Another cleaner" },
      "rug-cleaner": { label: "Another cleaner, who does only rugs" },
      "me-trade": { label: "I did" },
    },
  },
  room: { ask: "How much is it walked on, where it normally lies?" },
  household: { hint: "In your customer’s home, as far as you know." },
  matters: {
    ask: "What matters most to your customer?",
    answers: { keep: { label: "Keeping it: it means something to them" } },
  },
};
