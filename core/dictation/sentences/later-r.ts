/** Sentences with more r-controlled vowels, prefixes and suffixes. */
export const LATER_R_SENTENCES = `
# air, are
Zara shares her chair with Asha.
The women share one chair.
The true clue is a blue hair.
The fairy sat on a square chair.
Take care on the stairs.
I dare you to share your hair clip.
We share a pair of square chairs.
Fairy hair is rare.
There is fresh air on the stairs.
Be careful! The chair is for the hare.
Beware of the hairy chair!
Do not stare at the hare with curly hair.
My spare pair of socks has a square on it.
The airport has a chair for each fairy.

# ear, eer
Although the deer can hear me, it will not come near.
The deer can hear with its big ears.
A cheer came from the rear of the bus.
Steer the sled clear of the deer!
Dear Gran, the deer ate my homework.
This year I will hear the sea.
My beard is nearly down to my feet.
The deer appeared, and we cheered.
I fear that my ears stick out.
Hear that? It is a deer with a beard.

# ore, oar
They built a boat from cardboard, and its oar was a spoon.
Three queens in a jeep need more seats.
I snore, but the pig snores more.
Explore the shore and ignore the rain.
The store sells cardboard oars.
The oar floated to shore.
The lion roars, and the mouse snores.
We had more fun on the shore than before.
All aboard, and bring an oar!
My skateboard is at the store.
The roar came from the shore.
He wore a cardboard crown.

# ire, our as in hour
The juice is sour, but the campfire is warm.
The tire is flat, so we sat for an hour.
Admire the campfire for an hour.
We require flour for the cake.
The milk is sour, but the flour is fine.
The entire cake was gone in an hour.
The wire fence took me an hour.
The fire truck has six tires.
I desire a nap of one entire hour.

# -ar
The lizard found a rough collar.
The dollar is on the collar.
A lizard sat on the calendar.
The wizard likes mustard on his pie.
The popular lizard has a regular nap.
A solar lamp is in the cellar.
The lizard lost its collar, but it found a dollar.
Mark your calendar for a regular nap.
The wizard walks backward and the lizard forward.
The mustard is similar to glue.
Her diary is popular with the cat.
My calculator is popular with the cat.
Regular naps are popular at my house.
The toy ambulance is a popular gift.
Our goat is not a regular goat.

# ear as in pear
The bear put sugar on the pear.
The hare sat on the chair and the bear on the stair.
The bear wears a pear on its head.
I cannot bear to tear the paper.
Wear your hat, little bear.
The pear is for the bear, and the hug is for you.
What does a bear wear to a party?
Wearing a pear is not that hard.

# ure, both sounds
Climb up and make your seat secure.
The cure for a frown is a joke.
I am secure in my seat.
Pure honey is the best cure.
The cure for a sour face is a pure smile.
I figure the cure is a nap.
A figure of snow will not endure the sun.
Is the gate secure?

# ex- before a vowel
Exactly one wolf sat on the exit sign.
The exit is exactly here.
Take the exam and then exit.
Do dragons exist?
This is an exact example.
For example, a pig cannot fly.
The exam was exactly one page.
The exit does exist, but I cannot find it.
Dragons exist in books, for example.
An exotic bird sat by the exit.

# re-, de-; -less, -ness, -ment
My aunt has endless kindness.
Kindness is never useless.
We need a payment of sixteen hugs.
The basement is full of darkness and socks.
The endless trip made the dog restless.
Remember to return the robot.
My apartment is spotless, and my dog is not.

# -est
This is the biggest box of all.
Who can run the fastest?
The softest bed is the best one.
The longest snake is the thickest too.

# -ful
The helpful dog is careful, too.
The peaceful cat is playful at night.
A cheerful smile is helpful.
My bowl is a hopeful sight.
The playful pup made an awful mess.
I am thankful for my forgetful dog.

# -on, con-
The lion lost a button.
Connect the balloon and the ribbon.
A lemon fell on the lion.
The contest is on the balcony.
Connect the dots to find the dragon.
The melon contest has a lemon in it.
A wagon of cotton is a soft seat.
`;
