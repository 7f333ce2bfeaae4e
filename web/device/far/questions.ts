import type { DeviceMessage, ServerMessage } from '../../../core/sharing/message.ts';

/** What a device asks the server, and what the server answers, by their numbers. */
export interface Questions {
  /** A number that nothing sent before has. */
  nextNumber(): number;
  /** Asks, again when it is to ask later; null when the line was lost before an answer came. */
  ask(make: (k: number) => DeviceMessage): Promise<ServerMessage | null>;
  /** Hands an answer to whoever asked; whether it was one. */
  answer(message: ServerMessage): boolean;
  /** The line is lost: nothing that was asked is answered. */
  lost(): void;
}

/** Nothing is asked yet. `send` sends over the line, and tells whether there is one. */
export function createQuestions(
  send: (message: DeviceMessage) => boolean,
  wait: (ms: number) => Promise<void>,
): Questions {
  const answers = new Map<number, (answer: ServerMessage | null) => void>();
  let last = 0;
  return {
    nextNumber: () => ++last,
    async ask(make) {
      for (;;) {
        const answer = await new Promise<ServerMessage | null>((resolve) => {
          const number = ++last;
          answers.set(number, resolve);
          if (!send(make(number))) {
            answers.delete(number);
            resolve(null);
          }
        });
        if (answer?.t !== 'later') return answer;
        await wait(answer.ms);
      }
    },
    answer(message) {
      if (!('k' in message)) return false;
      answers.get(message.k)?.(message);
      return answers.delete(message.k);
    },
    lost() {
      for (const answer of answers.values()) answer(null);
      answers.clear();
    },
  };
}
