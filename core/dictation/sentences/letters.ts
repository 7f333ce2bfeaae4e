/** Sentences of the first letters to single doubles: words of three or four letters. */
export const LETTER_SENTENCES = `
# d
The man had a hat.
I did it!
I had a hat.

# s
You did it!
Sam had a hat.

# o
Dad sat on the mat.
Tom sat on a hat.
You sat on it.
He sat on the mat.
He did not sit on it.
Sam sat on the mat.
Sam did not sit.

# e
It was hot.
It was the hat of a man.
The hen sat on the hat.
Ten men sat on the mat.
Ned met the hen.
The hen hid in the den.
It was not the hen!
He met a man in a hat.
I met ten men.

# p
Tap, tap, tap!
Pat the hen, Dad.
Pip hid in the pan.
She had a pet hen.
She sat on top of the pot.
She hid the pan in the pot.

# g
Get the net, Pat.
Tom got a top.
The pig sat on the mat.
Get the pig, Ned!
The dog sat in a pan.
Dad got a pet pig.
We had a pig in the den.
We got a tan dog.

# l
Let the dog in, Dad.
The lid sits on the pot.
Mom met my dog.
The hen sat on my hat!
My dog hid the lid.

# u
Pat the pup.
The pig gets a nap in the sun.
Get up, Nat!
Dad sat in the sun.
The pup dug up a nut.
Did the pup dig a pit?
Lin got a lot of nuts.
Let us get a pet.
The dog led us to a log.
Hal let the pup lap it up.
My map was in the mud.
Mom got mud on the map.
Meg hid the hat in the hut.
My pup dug a pit in the mud.
Let my dog sit in the sun.
My hen sat in the mud, not the sun.
Sit in the sun, Lin.
He let me get up.
The mud got on me.

# r
The rat ran to the red hut.
My hat got a rip in it.
Are you hot, Dad?
The rat ran up my leg!
The red hat got a rip in it.
Run to me, pup!

# b
A pig sat in the tub.
The pup bit the bag.
A bug sat in the bin.
You sat in my tub!
Dad gets on the bus.
Dad bit the bun.
Get in bed, Ned.
The dog sat on the bed.
The dog got in the tub, but the pup did not.
Tom sat on top of the bag.
A bug sat on a log.
The dog hid the bun, but the hen got it.
Did the hen hop on the bed?
Rub the dog, not the rug.
The bug bit my leg.
A big bug got in my bed!
Go to bed!

# c
Do not sit on the dog.
The cat sat on the hot tin lid.
Can you cut the bun, Mom?
Tim can pet the cat.
The cat got in the cab.
Can a cat nap in a cup?
Can the red hen run?
The cat got on the rug, but the rat did not.
Do not sit on the hen!
Do not go up to the bug.
Do not cut my hat!

# f
If it gets hot, get the fan.
Meg fed the cat, but it did not get up.
Dad had a lot of fun in the mud.
The fog hid the bus.
No, I am not a fig!
No fog, no mud, no fun.

# x
The ox sat on my box!
Mix it up in a big pot.
A fox met an ox.
Max can fix the fan.
The hen said it was hot.
"Do not tip the pot," Dad said.
Dad said not to tap on the pan.
I fed the fox.

# y
Yes, you can get a pup!
The pup did not nap yet.
Let it be, Max.

# w
The pup got wet in the mud.
My wig sat on the cat!
A wet dog sat on my lap.
Did you win the red hat?
Wag, wag, wag!
We all got wet.
All the pups got wet.

# j
Jun got jam on the rug.
Jun can jog to the top.
They led the pig to the den.
They got jam on me.
They let me jog to the top.

# k
Dad had a bun for the hen.
Mom can cut it up for the cat.
The fig was for you, not for the pig.
The fox had a box for a bed.
The jam was for the bun, not for my hat!
The kid hid in a big box.
Kim got a kit to fix the fan.
The yak ran to Ken.
Run to the hut for the pig.
The rug was for my pup.

# z
Zip up the bag, Kim.
Zip! The bug ran up my leg.
I have to zip up the bag.
We have to zip up the big red bag.
I have a pet ox.

# v
The vet fed my cat.
Dev got in the van.
A van can fit ten men, but not an ox.
Viv ran to the vet.
What can a cat do?
What did the cat do to my bed?
What a big cap!
What did the vet do?
What a fun van!

# ff, ll, ss, zz
You have a zip on your hat.
Tess fell off the bed.
Will you fill the pot, Dad?
The hen will sit on the hill.
Do not miss the bus!
Tell Jeff to get the bell.
Pass the jam to Russ.
Buzz, buzz! The bug sat on the bell.
Will the doll fit in the box?
My cat will sit on the hot sill.
Huff, puff, up the hill!

# s that buzzes
Ned did sums in bed.
The man let the dogs in.
It is fun to run in the fog.
Yes, the yam is for you.
All ten pigs got in the pen.
They have a big tub for the dogs.
Bob has a bed for his bug.
Is your hat on the cat?
Your fan is in my box.
If it is fun, let your dog in.
One ox sat on my box.
The hill is a big mess of mud.
Ross will miss his pup.
His dog is as big as a pig!
My hen has a hat.
Is the jam in his bag?
The kids run up the hill.
Ten bugs sat on ten mugs.
The van is big, but the bus has a bell.
His dogs dig pits in the mud.
Beds are for naps, Max!
The cat is as wet as the dog.
Has the vet fed the hens?
Is his hat on the hen?

# ck
There was a yak on the bus.
Yes, there was one yam in the pot.
Was there a yak in your tub?
There is a duck in my sock.
The duck sat on a rock.
Pick up your socks, Jack!
My sock is in the duck pen.
Kick it back to Nick.
Pack the red sack, Rick.
The hen will peck at my neck!
Lock the van, Dev.
The duck is sick of the mud.
Ten ducks are on the dock.
A duck has no socks.
The back of the sack has a rip.

# qu
Her wet wig sat on the cat.
Did her dog win?
Mom has jam on her legs!
The duck will quack at the vet.
Quick, get the dog off the bed!
Dad had a quiz on ducks.
Do not quit, Meg!
Is it a quick quiz?
Quack, quack! The duck has a sock.
The quick duck got the bug.
If you quit, the duck will win.
`;
