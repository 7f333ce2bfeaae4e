/** Sentences with the Latin endings. */
export const LATIN_SENTENCES = `
# -tion
The station is in motion.
My vacation plan is a nap.
Pay attention to the directions.
Add a caption to the action.
This section of the shop is for fiction.
The nation has a celebration.
One question: is the lion on vacation?
The invention needs no instructions.
My imagination is in motion.
Lotion is not a lunch option.
The conversation at the station went on and on.
Addition is fun, and subtraction is less fun.
Mention the potion to no one.
The question needs your attention.

# -ture; d before u
The creature in the picture is a turtle.
Nature is a big adventure.
The future of this furniture is not good.
The vulture gave a lecture.
Capture the creature in a picture.
This mixture is for the creature.
The temperature is low, so wear socks.
Our adventure is in the picture.
Education is an adventure.
I nurture nature in my garden.
Gradually the creature came closer.
We had a picnic in the pasture.
My machine makes one noise.

# i as in onion, -gion
In my opinion, onions are brilliant.
A million onions are in the cellar.
My companion is a senior dog.
A billion stars have a brilliant view.
The onion is familiar to us.
This region grows onions.
"My opinion is brilliant," said the genius.
The union of an onion and a cake is not brilliant.
My junior companion has a million questions.
The view of the region is familiar.

# -sion and -sure with voice
The leather is heavy, so measure it twice.
The explosion was just a balloon.
I measure my pleasure in cake.
It is my decision to treasure this day.
The television is usually on.
The treasure is under the television.
Measure twice and cut one time.
An invasion of ants came to the picnic.
With great pleasure, I present the treasure.
My vision is fine, but the map is not.
The conclusion is that ants like cake.
Division is the usual way to share a cake.
The occasion is casual, so wear your socks.

# -sion, -ssion
Our mission is to clean the mansion.
Ask permission first.
The discussion is about the mansion.
His expression gave me the impression of joy.
Admission to the mansion is one smile.
The tension is over, and so is the session.
My mission is an expedition to the fridge.
She has a passion for collecting buttons.
The comprehension questions are about a mission.
In this session, we have permission to giggle.
The extension of the mansion is for the cat.
A profession I admire is plumber.

# -cial, -cious and their kin
The magician is a special musician.
It is crucial to be social.
The official race is for snails.
My special skill is napping.
An official came to count the frogs.
The musician plays a special horn.
The magician got ancient glue on his hat.
Our social club is for musicians.
Artificial snow is not so cold.
It is official: today is a special day.
The ancient magician lost his hat.
The politician gave a special speech to the ducks.
`;
