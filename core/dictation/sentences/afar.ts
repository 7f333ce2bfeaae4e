/** Sentences with silent letters and words from other languages. */
export const AFAR_SENTENCES = `
# gu; u after s
Guess which penguin has the guitar.
The guest is a guide.
The guard has a penguin.
I guess the penguin is the guest.
The guide speaks a language of clicks.
The penguin persuaded the guard to dance.
A disguise is a good way to guard a pie.
The guitar is for the guests.
Guess the language of the guinea pig.
My guest plays the guitar and the penguin hums.

# sc, ps, xc
The darkness gave me a moment of excitement.
Science is exciting.
The scene is excellent, except for the mud.
The scent of soup is excellent.
My muscles are excited.
The scientist has strong muscles.
Everyone came except the scientist.
What a fascinating scene for science!
The excited scientist ran down the hall.
I accept the gift with excitement.
The scenery is excellent, except for the fog.
The moon is a crescent tonight.

# Silent t, al as in palm
Paddle past the purple castle of sand.
The atmosphere on the pier is calm.
Listen to the whistle.
The castle is calm.
Fasten the castle gate and whistle.
Stay calm and listen.
A palm tree is by the castle.
The pups wrestle, and the cat whistles.
Soften your voice and listen.
I often listen to the palm trees.
The calm castle has a bustling kitchen.

# Silent b, mn
I doubt that the column is straight.
No doubt, autumn is here.
The column is tall, no doubt.
A solemn owl sat on the column.
The debt of one dollar is paid.
Undoubtedly, autumn is the best.

# gh as in ghost, rh
The ghost has a cough.
The spaghetti is rough enough.
A ghost told me a rough joke.
The rough sea made the ghost cough.
It is fun to eat spaghetti with a spoon.
I have had enough spaghetti.
The ghost had a cough at night.
The bowl is full of spaghetti.
The rhino can rhyme.
It is an honor to meet a rhino.
An honest rhino is a good friend.
The rhino sat for an hour.
What can rhyme with rhino?
A rhyme is a song with a spring in its step.
The rhinos rhyme for an hour.

# ch as in anchor
The school chorus has an anchor.
My stomach has an echo.
The character in the book is a mechanic.
The mechanic dropped an anchor.
Our school orchestra plays in harmony.
The echo of the chorus is loud.
A character in the orchestra has a big horn.
The anchor fell on the chord.
Technically, the school has two choruses.
The chameleon is a quiet character.

# x as in xylophone, ss as in tissue, -sm; vv, kk
The rhino has rhythm in its feet.
The xylophone has rhythm.
Pass the tissue to the giant.
The rhythm of the xylophone is fast.
No pressure! It is just a tissue.
I play the xylophone with enthusiasm.
The issue is a lost tissue.
Her optimism and enthusiasm help us.
I assure you the xylophone is fine.

# ch as in chef
The famous chef is nervous.
The chef has a machine for pies.
The chef dropped soup down the chute.
A parachute is a kind of machine.
The chef has a curly mustache.
The brochure is about a machine.
The machine gave the chef a mustache.
Ride the chute, but bring a parachute.
The chef and the machine made a pie.

# que, gue
A mosquito sat on my tongue.
My colleague is in a league.
The dialogue is about a mosquito.
The plaque shows a unique boat.

# -ffe, -lle, -tte, -ge
The giraffe is taller than the gazelle.
A giraffe has no need of a ladder.
The beige giraffe hid in the barn.
The cassette is beige.
A giraffe in a car is a tight fit.
The gazelle and the giraffe ran home.
The giraffe ate the top of the tree.
A beige gazelle sat on the cassette.
`;
