/** Sentences with vowel teams. */
export const TEAM_SENTENCES = `
# ea
I do not have any new pets, just a new hat.
We eat peas and beans at the beach.
The seal had a dream of the sea.
Read to me, Dad, and I will read to you.
A clean seat is a treat.
Each kid on the team had a peach.
A flea can leap, but can it read?
The tea is so hot that steam came out.
I mean to teach my cat to read.
Heat the beans, but leave the cream cold.
The leaf fell in the stream.
We had a feast of peas, beans and cream.
If the seal can reach the peach, it will eat it.
Sneak a peach to the seal.
Leave a seat for the flea.

# ai, ay
Many seals leap into the sea.
The whale ate the bait and made a wave.
The snail waits all day for the rain.
We play with clay and paint on a tray.
The train is late, so we wait and play.
May I stay and paint the gray snail?
It rained, so the mail is wet.
The tail of the whale made a big wave.
He paid for the train with a plain gray stone.
We made a chain of clay beads.
The chain on my bike came off on the way.
Stay in bed and paint me a train.
Wait for me in the hay!
The day it hailed, the snails stayed home.
Hail fell on the tray and made it ring.

# ee
Reem feeds the sheep.
Reem sees a bee in the tree.
Put the cake down and come see this.
People have been so kind to me.
Many people wait for the train.
I need to see the queen.
A bee has six feet and no socks.
We meet each week to sweep the street.
He keeps his teeth clean and his jeep green.
The queen likes sweet beets.
Peek at the deep green sea.
Can a sheep weep?
The eel can see in the deep.
Do not speed down the steep street.
Keep the bees free and the beets sweet.

# oo as in spoon
The plan is too big for my desk.
My mother and father need to sleep.
My mother has three bees and a broom.
My father likes to mop at noon.
The moon is up, and the zoo is still.
Use a spoon to scoop the beans.
The room has a cool roof.
My tooth fell out at noon!
The broom fell, and boom went the stool.
Zoom went the cat with my boot.
A smooth tune can help your mood.
Soon the moon will shine on the pool.
The stool in my room has a loop of rope.

# ow as in snow
My other boot is too big, and the only sock is wet.
The other crow is the only slow one.
The snow is slow to melt.
Show me the crow in the snow.
The seeds grow in a row.
Blow on it if it is hot.
Throw the stick, not the bowl!
She has her own bowl and her own spoon.
The glow of the moon is on the snow.
We grow beans, and the crows eat them all.
Slow down and let the snail show us the way!
The crow got blown off the low tree.
A row of crows sat in the snow.
My own bowl is so low that the dog eats from it.

# igh
I like snow because you can throw it again and again.
Go up again, because the slide is right here.
The night is bright and still.
We might see a bright light at night.
Hold tight! It is a high slide.
The moth likes the light at night.
His tights are a bit too tight.
It is a slight fright, but it is all right.
He sighed at the sight of the green beans.
High up in the tree is a light.
The flight might be late.

# oo as in book
Good dogs can swim, and good frogs can jump.
Look at that frog swim!
I will look for the slug that hid.
Get down and look at the snake!
We read a new book, and then we ate a peach.
Call the cook, and look for their book.
Good luck, Jack!
I hope that joke is a good one.
The cook took a look at the book.
I stood on one foot and shook.
Hang the hood on the hook.
He took the wood to the brook.
She took a good book to bed.
The wet dog shook, and we all got wet.
We stood and looked at the woods.
You cook, and I will look in the book.
The book is good, but the cook is best.
My right foot is in the left boot!

# oa
Do not talk to the goat in the coat.
Once I had a goat that could talk.
The goat looked at the cook book and shook.
The goat ate my coat!
A toad in a coat sat on the road.
The boat will float if the goat gets off.
Load the boat with coal and oats.
Soak the oats, then toast the loaf.
The toad has a lump in its throat.
My goal is to float on my back.
The goat made a goal, and the coach fell off the stool.
Soap and a goat do not mix.
The coach has a toad in her coat.
Do not moan, just float.
I call, you call, and we all talk.
`;
