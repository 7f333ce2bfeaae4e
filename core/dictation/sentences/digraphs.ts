/** Sentences with two letters for one sound, and with clusters. */
export const DIGRAPH_SENTENCES = `
# ng, nk
Ming has a pink hat.
Hang up your long sock, Ming.
Do you want jam on it?
They want to jog, but not in the mud.
The king has a long red hat.
Sing a song to the sick duck.
A pink pig sank in the mud.
The bell rang, but Dad did not get up.
Can a king wink?
The ink got on the king!
The duck sings a song to the sun.
Hank has a pink sock on his neck.
The bug on the rock has long wings.
Ring the bell for the king.

# sh
Did the bus get here yet?
Kim has a kit in here.
The fish will wish for a dish of bugs.
Shut the shed, Josh!
A fish will not run.
The ship has ten men.
Hush! The cat is in bed.
Josh will dash to the bus.
The shop has hats for fish.
Shall we dig for a shell?
The dog is in a rush to get the fish.

# th, with and without voice
Come here, Kim!
Come to the tub, Max.
Is this for me?
I think the king is a duck.
This bug is thin, but that bug is not.
The moth is on the bath tub.
Then the duck sat in my bath!
Thank you for the socks, Seth.
That thing in the bath is a duck!
Is this the path to the hut?
Beth got six hats, then ten socks.
Do you think a moth can sing?
The king sat with his dog.
Get them a bath, Mom!
Thud! The duck fell off the bed.
This is the moth that bit the rug.
Rush to the shop with the cash.
A ship in a bath is a lot of fun.

# wh
The vet got a cup from us.
When the bell rang, the dog ran to the bus.
Whiz! The bug is off to the shop.
When can the fish get a bath?
When Dad sings, the dogs run off!
When it is hot, the hens sit in the shed.

# ch
Chen can chop the nuts.
Who fell off the bed?
Who will fill the tub?
Who fed the doll a bun?
The chick ran to the king.
Chen has jam on his chin.
A rich king can get such a big ship.
Chop the nuts, Dad.
The chicks had a chat with the duck.
Check the shed for the chicks.
Do not chuck the fish!
Chess is fun, but it is a long job.
When will the chick sing?
Which dog is wet?
Which sock is this one?
Which kid has my hat?
Which ship is in the bath?
Which bug has wings?

# Clusters at the end
Tim was hot and sad.
The vet has a van and a cat.
Tim hid the hat, and Dad sat on it.
Dan had ten hats, and the hen had one.
All the hens and the pig had a nap.
They let the dog in, and it got on the mat.
Zip it up and come to the hut.
Come in and get a hug.
The kid sat here, and the yak sat there.
Some dogs dig, and some nap.
Her duck can quack and run.
Here is a fish, and there is a ship.
Who has the best chest of socks?
Some ants can jump.
Pigs, dogs and hens sat in the van.
The sun sank, and the bell rang.
They had a mud bath, and then a bath.
That path is long and thick with mud.
Which chick is in the chest?
Dad will chop and chat.
The ant went up the hill and had lunch.
Jump in and help us, Tom!
My best pants are in the pond.
The king sent the milk back.
Ask the vet, and then get the dog.
Kim left the lamp on.
A gust of wind sent his hat to the pond.
The chimp and the ant went to camp.
Lift the tent and hunt for the sock.
This gift is for the elf at the desk.
Lend a hand, and then rest.
The raft sank, but the duck did not.
The dust went up, and Dad had a mask on.
Just ask, and I will help.
Fish and ducks must get wet.
The last elf had a belt that was just a bit long.
Which lamp is on the desk?
The wind bent the tent, and the tent sat on us.
Mend the vest with a bit of silk.
The chest is shut, but the king can lift the lid.
An ant can lift a lot with its chin.
I am the king of the sand hill!

# Clusters with r
The ducks were on the dock.
The frog can jump, and the crab can dig.
Bring the drum and the bell, Fred.
Grab a brush and brush the dog.
Crash! The drum fell off the truck.
My twin has a trick with ten bricks.
Gran will drink the milk and rest.
A crab had a nap on the grass.
Fred and Gran went on a trip to the pond.
The crust is the best bit.
The frog drank and drank and drank.
Drop the drum and run!
Brad has a crab in his dress-up box.
Trish did a trick, and the frog fell off the drum.
Do not trust a crab with a brush.
Press this, and the frog will jump.

# Clusters with s
Sam and his twin run to the swing.
Two ducks can quack at one dog.
The two ducks were quick.
Two slugs had a nap on a step.
A skunk can smell this snack!
Stop and spin, then stop and spin.
Sniff, sniff! Is that fish?
Stand still and do not step on the slug.
The frog swam, and the duck sat still.
Can you spell skunk?
My sled is stuck on the step.
Snap went the stick!
The dog slept in the swing.
Stan sent ten stamps to Gran.
Swing, then jump in the sand.
Do not spill milk on the skunk.
The skunk has a spot on its skin.
The slug is not quick, but it will not stop.
The best spot to swim is the pond.
The snack got stuck to the step.

# Clusters with l
Where did the king sit?
Where is the pink sock?
Where did the plum land?
Flip, flop went the fish.
A black cat slept on the flag.
Clap your hands and do a flip.
The plan is to plant ten plums.
Glen is glad that his plum is big.
Plug in the lamp, and then clap.
Blink if you are glad.
The class has a clock and a flag.
A flock of ducks slept on the cliff.
The plum fell, and the dog had it for lunch.
Cluck, cluck! The hen is glad.
The clock fell flat on the grass.
Click, clack, click went the black clogs.
The flag is as big as a sled.
Can a slug clap?
The ducks on the cliff clap and flap.
`;
