/** Sentences with open and fading syllables, consonant-le, soft c and soft g. */
export const OPEN_SENTENCES = `
# The vowel that fades
Hana gave the dragon a blanket.
Asha is about to open the basket.
Hassan has seven lemons in his pocket.
Rosa has a dragon in her pocket.
Today my sister and I will sing together.
We went away in the car, but we always come back.
We won, and that was my idea!
Push the door, because the wagon is full.
The rabbit is napping in a basket.
I am running to catch the kitten.
The kitten is sleeping on a napkin.
The puppet is sitting on my sandwich.
The chipmunk is eating a muffin.
The kitten is hiding in my mitten.
Do not be upset if it is raining.
We are swimming, and the puppet is just sitting.
The summer I was seven, I ate six peppers.
The royal cook boils the royal eggs.
Annoy the boy, and you annoy the dog.
In August we crawl in the straw.
Seven chickens ran around the kitchen.
The children are awake.
There is a dragon in the garden.
I lost a button in the wagon.
Even the chicken has a blanket.
Open the basket and count to seven.
The problem is a dragon in my wagon.
The camel is asleep on the sofa.
The dragon happens to like salad.
Eleven children hid in the kitchen.
A camel has one problem with the sofa.
Seven ribbons are on the dragon.
Wait a second! The lesson is not over.
The panda is alone with a melon.
The banana is asleep in my pocket.

# a at the end of a syllable
Milo makes a paper hat for his snake.
Everyone is eight today, even the baby.
They baked a cake, and we helped.
I am making a rocket in the bathtub.
The baby is making a mess with paper.
The ladybug likes to play in April.
Wake the baby later.
We are baking a potato cake.
The baker is shaping paper stars.
The baby ate the paper, and the lady was amazed.
A lazy crab is still a crab.
Taking a nap is easy when you are lazy.
The lady is making a paper boat for the baby.
I am saving this paper for later.
Today the baby is waving at the ladybug.

# Consonant and le
Lena is asleep under the table.
Salma has a candle and a riddle.
Half of the apples made my uncle laugh.
The turtle is in a puddle.
A simple apple fell on the table.
Giggle, wiggle and jiggle like a noodle!
The eagle has a pebble in its nest.
A purple candle is in the middle of the cake.
My uncle can juggle apples and a bottle.
The beetle tickles my ankle.
Tickle the poodle, and it will giggle.
A pickle in a bottle is a riddle.
The turtle is able to settle in the puddle.
The beetle had a nibble of the apple.
My uncle is stuck in the middle of a puzzle.
Bubbles came from the bottle and the poodle.

# u at the end of a syllable, both sounds
Hugo plays music to a tulip.
I don't know who put tuna in my shoe.
The emu is reading the menu.
A tulip is a super gift.
The computer is using music to wake me up.
His uniform has tuna on it.
The ruler is as long as the tulip.
The pupils play music in uniform.
Is tuna on the menu?
The student sat on a ruler, but it was an emu.
A robot is not human, but it can hum.
The super emu can run and hum.
"Using a ruler is fun," said the student.
The music at the museum is super.

# rr, cc
I guess that we have enough carrots.
Sorry, my parrot ate your carrot!
Carry the cherry tart to Hassan.
The raccoon hid a carrot in the barrel.
May I borrow a berry?
The arrow points to the narrow path.
A sparrow sat on the barrel.
The parrot is sorry, but it is still hungry.
Strawberry jam is better than carrot jam.
The sparrow borrowed a cherry from the raccoon.

# c before e, i and y; -ce
Half of the mice laugh at the dance.
The spider sat in the center of her silver web.
Nice mice have a dance in the city.
Lucy dances on the ice in fancy socks.
The prince has ice on his face.
Slice the rice cake twice.
There is space for a race at my place.
The princess has a pencil for each finger.
The mice race in a circle.
At the center of the city is a palace.
Twice a day the mice go dancing.
The circus came to the city in a fancy bus.
Did you notice the ice on the fence?
A slice of spice cake is nice.
Take a pencil and trace your face.

# g before e, i and y; -ge
Don't eat the orange page!
Someone has a giant orange, and it will be gone in a minute.
The giant had a large orange.
A gentle giant lives in the village.
There is magic on this page.
The cabbage on the stage is strange.
The giant turned the page with his huge finger.
We had a change of plan, so I ate the cabbage.
The pigeon got a message from the village.
The gentle gerbil is on stage.
We can manage a large package.
At what age can a giant go to college?
Turn the page gently.

# -se, -ze, -the
Our house has a red door.
Turn left to get to our house.
Please stir it, and make it look pretty.
The school nurse lost her curls.
I heard a mouse dance.
The whole house heard the woman sneeze.
Danger! The giant has to sneeze.
The mouse is loose in the house.
The horse and the goose had a chat.
Breathe in, and then sneeze!
The noise made the goose sneeze.
"Squeeze the cheese," said the mouse.
A breeze can tease a moose.
The nurse has a purse and a horse.
Raise your hand to choose the cheese.
The goose froze in the breeze.
Please choose a horse for the nurse.
It makes no sense to tease a goose.
Freeze! There is a moose behind you.
The noise is just a mouse with a purse.
Loose geese make a lot of noise.

# dge
The judge had no answer, so she ate fudge.
A strange pigeon sat on the edge of the stage.
The badger is on the bridge.
The fudge is in the fridge.
The judge gave a badge to the hedgehog.
We sat at the edge of the hedge.
I will not budge till I get fudge.
The judge ate fudge on the edge of the bridge.
My gadget opens the fridge.
The hedgehog dodged the badger.
A smudge of fudge is on my badge.
The badger lodged by the hedge.
Nudge the fridge, but do not budge it.
`;
