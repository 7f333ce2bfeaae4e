/** Sentences with long vowels, silent e and fuller short words. */
export const SILENT_E_SENTENCES = `
# Silent e: a_e
Does a fish nap?
Where does the ship dock?
Jake made a cake in the shape of a whale.
The snake came late to the game.
Wake up, Kate, and get the cake!
The ape gave the grapes to the man.
Dave will trade his skates for a plane.
Take the lane that ends at the lake.
Do not blame the snake.
A brave ant came and sat on the cake.
Make a wave with your hand.
The gate to the cave is safe.
Shake the plate, not the cake!
Jade gave the same cape to the snake.
Do not be late for cake!
The snake has a name, and it is Dave.

# Silent e: i_e
Put the moth in the box, and then let it go.
Put that fish back!
Does the snake like cake?
I put the kite on top of the shed.
Mike likes to ride with a cat in his bag.
Five white ducks dive in the lake.
It is past nine, and the slide is wet.
Take a smile with you.
The kite went a mile up.
It is time to hide, Mike!
Wipe the slime off the wide slide.
The bride gave us a ride in a white van.
My bike has five bells and a flag.
The line for the slide is a mile long.
A pile of limes fell on my bike.
Nine bugs had a ride on a kite.
The hive is a fine spot to hide, if you are a bug.

# e, o and i at the end
The web was big, but the bug got out.
When will the dogs come out?
Which one is out in the sun?
I told the old snake to go to bed.
We can be kind to a child.
She had no hat, so he gave his to Beth.
Go and find me a cold drink.
Hold on! The wind will get your hat.
He is so kind that his cat likes him best.
I am so cold that my lips are white!
Most cats mind the cold.
She has a gold fish and a bold duck.
No, I did not find the old sock.
Hi, can we go with you?
He told me, and then I told the cat.
Be kind and hold the gate for me.

# Silent e: o_e
Is it a chick or a duck?
Which is it, a chip or a nut?
The mole woke up in his hole.
Rose sent a note home.
The dog chose the bone and not the stone.
His joke made milk go up my nose!
He drove home with a rope and a globe.
The mole broke his stove, so he had cold cake.
She spoke to the crab, and it froze!
The note said to go home.
I rode home in a robe.
Those stones are the home of a mole.
We hope to go home with a bone for the dog.

# Silent e: u_e, both sounds
Now jump!
Now and then, a frog will hop on a log.
June can tune the flute.
It is rude to poke a mule.
Use a tube to make a flute.
The rule is to be kind to the mule.
A cute mule sat on my flute.
That tune is so cute!
I hum a tune when I brush.
Luke and June hum the same tune.
The dune is just a big hill of sand.
The mule likes the tune, so he stands still.
A cube has six sides.
Use a rope to get the mule home.

# -ed without a beat of its own
The mole is little, but his hole is not.
A red truck went down the track.
The slug slid down the step.
We rode the sled down the slope.
We jumped in the pond, and the frogs jumped out.
Dad fixed the bike and filled the tank.
I missed the bus, so Mom picked me up.
The dog licked the plate and then licked me.
He smiled and closed the gate.
I wished for a bike and got a kite.
The king yelled, but the ducks just blinked.
The fox sniffed the socks and passed out!
We camped in a tent and joked till nine.
She asked the mule to hum, and he blinked.
The hens pecked at the box and clucked.
I asked him to help, and he smiled.
The crab lived in a shell and liked it.

# Three at the beginning
We could use a duck, and you would like it.
Scrub the dog, and then scrub the tub.
The squid made a big splash.
Strong ants can lift a lot.
Can a shrimp shrug?
The string on my kite has stripes.
The king fell off his throne and split his pants.
A scrap of string is a gift for a cat.
Strap the sled on the truck.
The squid and the shrimp like to splash.
Strike the drum, and then sing.
The script has lines for six frogs and a squid.
We stroll, and the dog runs.

# ve
You should know that twelve is a lot of cats.
Give twelve plums to the king.
Can you solve it, or will you ask me?
I live on a hill with twelve cats.
The shelves have twelve globes on them.
We give, and we get.
Twelve frogs live in this pond, and they all sing.
Shut the valve, or we will all get wet.
Give me five!
Solve this: six plus six is twelve.
A snake lives in that hole, so step back.

# tch, nch
I love to sing, and I sing very well.
The very best patch is the red one.
Catch it, Mitch!
The pup has a patch on his chin.
My dog has an itch, so I scratch his back.
Fetch the stick and drop it in the ditch.
She will pitch, and I will catch.
Hatch, little chick, hatch!
Switch off the lamp and go to bed.
Stretch up, then stretch down.
Sketch a fox in the ditch.
That batch of cakes is for the match.
The cat will stretch and then scratch the bench.
Can a crab fetch a stick?
We had a match, and the dogs had a nap.
`;
