/**
 * Which picture of the open set Fluent Emoji (flat, MIT; NOTICE) stands for a keyword. Reviewed one by
 * one: a child who sees the picture should say the keyword. The first keywords are drawn by us (inked.ts);
 * what else has no good picture there is drawn in drawn.ts, or has none: a keyword such as `doubt` or `region` cannot be drawn so that a child names it.
 */

/** Keywords whose picture has the keyword's own name. */
const sameName =
  'egg baby watch peach spoon rabbit ladder hammer star turtle bird cloud coin cow astronaut ' +
  'unicorn carrot raccoon mouse bread monkey worm knot chair deer fire pear station onion television ' +
  'mountain radio door guitar penguin castle anchor mosquito giraffe scissors pizza wrench ' +
  'parachute tiger boy key cookie spaghetti';

/** Keywords whose picture is called otherwise. */
const otherName: Readonly<Record<string, string>> = {
  anxious: 'anxious-face-with-sweat',
  athlete: 'person-running',
  beard: 'person-beard',
  boat: 'sailboat',
  book: 'closed-book',
  bridge: 'bridge-at-night',
  cheese: 'cheese-wedge',
  chef: 'cook',
  chocolate: 'chocolate-bar',
  dollar: 'dollar-banknote',
  earth: 'globe-showing-americas',
  eight: 'keycap-8',
  excited: 'star-struck',
  finger: 'backhand-index-pointing-up',
  four: 'keycap-4',
  glove: 'gloves',
  hippo: 'hippopotamus',
  hour: 'hourglass-done',
  light: 'light-bulb',
  muscle: 'flexed-biceps',
  ocean: 'water-wave',
  palette: 'artist-palette',
  palm: 'palm-tree',
  phone: 'mobile-phone',
  question: 'red-question-mark',
  rain: 'cloud-with-rain',
  rhino: 'rhinoceros',
  saw: 'carpentry-saw',
  sneeze: 'sneezing-face',
  snow: 'snowflake',
  soup: 'steaming-bowl',
  square: 'blue-square',
  squirrel: 'chipmunk',
  tree: 'deciduous-tree',
  wand: 'magic-wand',
  worry: 'worried-face',
};

/** The name of the icon for each keyword that has one. */
export const iconOf: ReadonlyMap<string, string> = new Map([
  ...sameName.split(' ').map((name): [string, string] => [name, name]),
  ...Object.entries(otherName),
]);
