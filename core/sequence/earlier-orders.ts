import { splitItems } from './item.ts';
import { itemNamed } from './item-named.ts';
import type { Sequence } from './sequence.ts';

/**
 * Which edition of our order this is. A class's place is kept with the edition
 * it was told in; whoever changes what the steps teach counts on, and keeps the
 * order there was below, so that places in it can be carried over.
 */
export const EDITION = 2;

/**
 * Our order as an earlier edition had it: steps by their items alone, for
 * carrying over what was taught. Null for this edition and for later ones.
 */
export function earlierOrder(edition: number): Sequence | null {
  if (edition !== 1) return null;
  first ??= {
    name: 'Sweepline order',
    steps: FIRST.trim()
      .split('\n')
      .map((items, place) => ({
        number: place + 1,
        stage: '',
        grade: 'K',
        title: '',
        items: splitItems(items).map(itemNamed),
        why: '',
      })),
  };
  return first;
}

let first: Sequence | undefined;

/** The items of each step, as they were up to and after 0.1.0. Never to be changed. */
const FIRST = `
  n
  i
  t word:the
  a word:a
  h word:to
  m word:i
  d word:of
  s word:you
  o word:he
  e word:was
  p word:she
  g word:we
  l word:my
  u word:me
  r word:are
  b word:go
  c word:do
  f word:no
  x word:said
  y word:be
  w word:all
  j word:they
  k word:for
  z word:have
  v word:what
  ff ll ss zz word:your
  s=Z word:one
  ck word:there
  qu word:her
  ng nk word:want
  sh word:here
  th th=DH word:come
  wh word:from
  ch word:who
  habit:ending-clusters nd nt mp st sk sp ft lt lp lk ld lf lm pt ct xt word:some
  habit:r-clusters br cr dr fr gr pr tr tw word:were
  habit:s-clusters sc sk sl sm sn sp st sw word:two
  habit:l-clusters bl cl fl gl pl word:where
  a_e word:does
  i_e word:put
  e=IY o=OW i=AY word:out
  o_e word:or
  u_e u_e=Y+UW word:now
  ed ed=D word:down word:little
  habit:three-clusters scr spl spr str shr thr squ word:could word:would
  ve word:should word:know
  tch nch word:love word:very
  ea word:new word:any
  ai ay word:many word:into
  ee word:been word:people
  oo word:mother word:father
  ow word:other word:only
  igh word:because word:again
  oo=UH word:their word:call
  oa word:talk word:once
  habit:long-words bb dd gg mm nn pp tt ing word:done word:work
  y=IY word:world word:through
  y=AY word:thought word:before
  ed=IH+D es word:sure word:great
  e_e word:friend word:something
  er word:anything word:nothing
  ar word:always word:our
  ur word:money word:school
  or word:pretty word:move
  ir word:gone word:water
  ou word:write word:door
  oi oy word:four word:eight
  ow=AW word:everyone word:both
  au aw word:poor word:pull
  habit:schwa a=AX word:push word:full
  a=EY word:none word:eye
  le l=AX+L word:half word:laugh
  u=Y+UW u=UW word:shoe word:don't
  rr cc word:enough word:guess
  c=S ce word:guy word:heard
  g=JH ge word:minute word:someone
  se se=Z ze the word:whole word:woman
  dge dg word:against word:answer
  ie ey word:anyone word:beautiful
  ea=EH word:bought word:break
  ew ew=Y+UW word:brought word:busy
  ie=AY oe word:buy word:caught
  ue ue=Y+UW word:daughter word:early
  o=AH word:earth word:favorite
  ar=AO+R or=ER word:heart word:hour
  a=AO al word:learn word:lose
  a=AA word:movie word:often
  kn wr word:prove word:sometimes
  gn mb word:straight word:though
  ph word:truth word:whose
  air are word:women word:worry
  ear eer word:although word:build
  ore oar word:built word:color
  ire our word:island word:juice
  ar=ER word:rough word:science
  ear=EH+R word:sugar word:tough
  ure ure=UH+R word:climb word:shoulder
  x=G+Z word:sword word:wolf
  e=AX est word:aunt word:flood
  u=AX word:blood
  o=AX
  ti ti=CH word:business word:honest
  t=CH ure=ER d=JH word:machine word:weird
  i=Y gi word:ancient word:bury
  si=ZH s=ZH word:chocolate word:honor
  si ssi word:knowledge word:pizza
  ci sci ce=SH xi c=SH t=SH word:restaurant word:soldier
  ai=AX ne te me le=L word:soul word:stomach
  augh ough word:tongue word:toward
  ou=AH word:unique word:broad
  i=IY i_e=IY word:cough word:folk
  ou=AX word:height word:iron
  y=IH y_e ye word:league word:receipt
  eigh ei word:calf word:canoe
  ou=UW word:choir word:dough
  ei=IY word:drawer word:ninth
  ui eu eu=Y+UW word:salmon word:scissors
  ah uh u=Y+AX word:sew word:steak
  ar=EH+R er=EH+R word:vegetable word:yacht
  our=AO+R oor word:drought word:eyebrow
  ear=ER our=ER word:yolk
  er=IH+R ir=IH+R yr=IH+R
  our=UH+R oor=UH+R ur=UH+R ur=Y+UH+R
  irr urr err arr orr yr or=AA+R re
  ere ier
  ir=AY+R yr=AY+R yre
  gu=G gu u=W
  sc=S ps xc cc=K+S
  t=- al=AA
  b=- mn
  gh rh
  ch=K
  x=Z ss=SH m=AX+M vv kk
  ch=SH che
  que qu=K gue ngue
  ffe lle tte ge=ZH
`;
