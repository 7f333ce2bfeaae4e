import { useEffect, useState } from 'preact/hooks';
import { dictation, ensureDictation } from '../../state/dictation-made.ts';
import { loadSentences } from '../../state/engine.ts';
import { readyEngine } from '../../state/engine-ready.ts';
import { running, setDictated } from '../../warm-up/running.ts';

/** Has today's dictation at hand for after the sounds: the words of the dictation page. */
export function useDictated(): void {
  const ready = readyEngine();
  const [sentences, setSentences] = useState<readonly string[]>();
  const words = dictation.value?.words;
  const drillId = running.value?.drillId;
  useEffect(() => {
    loadSentences().then(setSentences, () => setSentences([]));
  }, []);
  useEffect(() => {
    if (ready && sentences && sentences.length > 0) {
      ensureDictation({ lexicon: ready.lexicon, screen: ready.screen, sentences });
    }
  }, [ready, sentences, words]);
  useEffect(() => {
    if (words && drillId) setDictated(words.map(({ text }) => text));
  }, [words, drillId]);
}
