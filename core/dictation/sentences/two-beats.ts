/** Sentences with words of two beats and the endings that add one. */
export const TWO_BEAT_SENTENCES = `
# Two closed syllables, and -ing
Imran is helping the rabbit.
Milo and his rabbit are sitting on a log.
The work is done, so let us float.
Once upon a time there was a cook with one foot.
The goat has done a lot of work on the road.
The crab has a grin, and that is odd.
We are having a picnic on the hilltop.
My rabbit is digging up the pumpkin!
She is painting a sunset in red and pink.
Mom is planting beans in the muffin tin.
It is raining, and the ducks are singing.
The rabbit is hopping, and the insects are humming.
Are you kidding, or is that goldfish winking?

# y at the end of a longer word, and -ly
The happy puppy ran through the snow.
The puppy is muddy but happy.
It is a windy, chilly day.
Twenty ants ran up my belly.
The pony is sleepy, and I am hungry.
My tummy is empty, so feed me quickly.
The sloppy puppy got jelly on the rug.
He sadly sat in his sticky seat.
The happy puppy made Daddy muddy.
"Gladly," said the silly pony.
The bunny is fluffy, and the puppy is scruffy.
It is chilly and windy, so it is a cozy day.
Sixty silly ants had a picnic in my tent.
Penny has a funny, fuzzy sock on each hand.

# y at the end of a short word
I can see five kites in the sky.
I thought of a silly joke just before bed.
I thought it would fly, but it fell.
Three sheep sleep by the green tree.
We had food at noon by the pool.
We had a flight at night and slept right by the wing.
This jelly is lumpy, and that is fine by me.
Why did the fly land on my spoon?
Dry your feet, and do not cry.
I will try to fry an egg.
The sky is pink, and the moon is shy.
The shy pony will try to trot.
I spy a kite high in the sky.
Try not to cry if you spill the milk.
The sly fox will try to sneak by.
Why is the sky so high?
My socks will dry if you let them.
A pig will not fly, but it can try.

# -ed and -es with a beat of their own
A great big fox tested the sand.
We hiked a mile, and then we rested.
We planted seeds and waited for rain.
The kids painted the boxes green.
He handed me the dishes and hunted for the spoon.
I needed glasses to read it.
The foxes rested in the sand.
Ten buses waited in the street.
The kind cook added peaches to the cake.
The crow landed and tested the sandwiches.
Dad lifted the boxes, and then he rested.
We visited the zoo and painted the foxes.
The snow melted, and the ditches filled up.
She trusted me with three wishes.
He tested the benches, and then he waited.
The twins acted as two lost foxes.

# Silent e: e_e
There is something in the boxes, and it is wagging.
My friend sent me something in a tube.
These boots fit, but these socks do not.
Pete sees three bees in these trees.
The athlete ate these five peaches.
The theme of the week is bees.
Delete the line, and then try again.
These athletes can run all day.
Pete is an athlete, and these are his muddy socks.
Are these feet mine?

# a and u at the end of a syllable, before -ing and elsewhere
We are making a cake for him.
I am using his pen.
He is baking and she is shaking the rug.
Is he taking the music box?
`;
