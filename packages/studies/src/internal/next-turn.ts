/**
 * Lets other work run between blocks of solves, so that a page or a terminal stays alive; a timer is the one
 * way that every runtime has.
 *
 * @returns resolves in the next turn
 */
export function nextTurn(): Promise<void> {
  return new Promise((resolve) => {
    setTimeout(resolve, 0);
  });
}
