/**
 * Questions under way at once. It is a fixed number, whoever answers, so that what is asked next, and with it every
 * result and count, does not depend on how many workers there are.
 */
const underWay = 16;

/**
 * Asks one question after another, some at once, and gives the answers in the order of the questions.
 *
 * @param next - the next question, when there is room for it; undefined where there is none for now
 * @param ask - answers a question
 * @yields each question with its answer; what is done with it may open further questions
 */
export async function* answeredInOrder<Question, Answer>(
  next: () => Question | undefined,
  ask: (question: Question) => Promise<Answer>,
): AsyncGenerator<{ readonly question: Question; readonly answer: Answer }> {
  const waiting: { readonly question: Question; readonly answer: Promise<Answer> }[] = [];
  for (;;) {
    while (waiting.length < underWay) {
      const question = next();
      if (question === undefined) break;
      const answer = ask(question);
      // Where an earlier one fails or the work ends, nobody waits for this one.
      answer.catch(() => undefined);
      waiting.push({ question, answer });
    }
    const first = waiting.shift();
    if (first === undefined) return;
    yield { question: first.question, answer: await first.answer };
  }
}
