/**
 * Which picture of the open set Fluent Emoji (flat, MIT; NOTICE) stands for a keyword. Reviewed one by
 * one: a child who sees the picture should say the keyword. What has no good picture there is drawn in
 * drawn.ts, or has none: a keyword such as `doubt` or `region` cannot be drawn so that a child names it.
 */

/** Keywords whose picture has the keyword's own name. */
const sameName =
  'ant zebra skunk duck sun octopus egg goat umbrella rocket fox yarn kite bell dress nose ring ship feather ' +
  'whale bone watch peach spoon rabbit ladder hammer fly star turtle bird cloud coin cow astronaut ' +
  'unicorn carrot raccoon prince mouse shield donkey bread monkey worm knot chair deer fire pear ' +
  'station onion television mountain radio door guitar penguin castle ghost anchor mosquito ' +
  'giraffe bank scissors pizza wrench parachute';

/** Keywords whose picture is called otherwise. */
const otherName: Readonly<Record<string, string>> = {
  anxious: 'anxious-face-with-sweat',
  apple: 'red-apple',
  athlete: 'person-running',
  autumn: 'fallen-leaf',
  ball: 'soccer-ball',
  beard: 'person-beard',
  bike: 'bicycle',
  boat: 'sailboat',
  book: 'closed-book',
  box: 'package',
  bridge: 'bridge-at-night',
  cake: 'birthday-cake',
  cheese: 'cheese-wedge',
  chef: 'cook',
  chick: 'front-facing-baby-chick',
  chocolate: 'chocolate-bar',
  city: 'cityscape',
  cube: 'ice',
  dinner: 'fork-and-knife-with-plate',
  dollar: 'dollar-banknote',
  earth: 'globe-showing-americas',
  excited: 'star-struck',
  four: 'keycap-4',
  gem: 'gem-stone',
  glove: 'gloves',
  hat: 'top-hat',
  hour: 'hourglass-done',
  kitten: 'cat',
  leaf: 'leaf-fluttering-in-wind',
  light: 'light-bulb',
  map: 'world-map',
  ocean: 'water-wave',
  palette: 'artist-palette',
  palm: 'palm-tree',
  phone: 'mobile-phone',
  picture: 'framed-picture',
  puppy: 'dog',
  question: 'red-question-mark',
  rain: 'cloud-with-rain',
  rhino: 'rhinoceros',
  saw: 'carpentry-saw',
  sleigh: 'sled',
  sneeze: 'sneezing-face',
  snow: 'snowflake',
  sock: 'socks',
  soup: 'steaming-bowl',
  square: 'blue-square',
  squirrel: 'chipmunk',
  thumb: 'thumbs-up',
  toy: 'teddy-bear',
  tree: 'deciduous-tree',
  wand: 'magic-wand',
  web: 'spider-web',
  worry: 'worried-face',
};

/** The name of the icon for each keyword that has one. */
export const iconOf: ReadonlyMap<string, string> = new Map([
  ...sameName.split(' ').map((name): [string, string] => [name, name]),
  ...Object.entries(otherName),
]);
