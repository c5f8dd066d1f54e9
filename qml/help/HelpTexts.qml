// SPDX-License-Identifier: GPL-3.0-or-later
// The texts of the help: each page and each deed in a few plain sentences, with a caution where the
// work can hurt. Keys are those of pages and deeds.
import QtQuick

QtObject {
    readonly property string poison: qsTr("All parts of cycads are poisonous, seed most of all: wear gloves, keep pets, livestock and children away. If any was eaten, see a vet or doctor at once.")
    readonly property string dust: qsTr("Potting mix can carry Legionella: wet it, wear mask and gloves, open bags away from the face, wash hands.")
    readonly property string lifting: qsTr("Mind your back: lift close to the body, and not above about 25 kg alone.")
    readonly property string permit: qsTr("Many cycads are protected: check whether this needs a permit. The program keeps papers, the authority decides.")
    readonly property string spines: qsTr("Leaves and cones carry spines: long sleeves, gloves and something over the eyes.")
    readonly property string heat: qsTr("Bottom heat: a protected circuit, and the thermostat's probe in the medium.")

    readonly property var topics: [
        {
            key: "around",
            title: qsTr("Finding your way"),
            says: qsTr("The line at the top, or down the left edge, goes from pollen to out: tap a station to see what is there. The field at the bottom takes a scan, a code or a name from any page. Escape goes back one step, Tab and the arrows walk through everything, F6 goes to the next part of the window, End goes past a list, Ctrl+Z takes back the last entry, F1 opens this help.")
        },
        {
            key: "start",
            title: qsTr("Beginning a book"),
            says: qsTr("A book is one file with all of a nursery. Begin with the first cone, or bring in an old spreadsheet, or look at the demo first. The book opened last opens by itself the next time.")
        },
        {
            key: "first cone",
            title: qsTr("The first cone"),
            says: qsTr("One question after the other: the plant that bears the cone, what is seen of the cone, the pollen it had and when. Nothing is written before the last step; back changes an answer. The page of the cone then says what comes next, and when.")
        },
        {
            key: "book",
            title: qsTr("The book and its file"),
            says: qsTr("Here the book is named, copied, put elsewhere, and another one opened. A copy is whole and can be made while the book is open. Keep one on another disk. An old spreadsheet can be brought in here at any time.")
        },
        {
            key: "old table",
            title: qsTr("Bringing in an old spreadsheet"),
            says: qsTr("Save the sheet as CSV. Say for each column what it holds; what no column holds can be said for all rows. Try it out as often as you like: each row says what it would become, each fault stands with its line and column. Nothing is written until no fault is left and you take it in. Rows of one cross with the same days count as one cone. Pots keep their parents in words, since nobody knows any more how many seeds were sown for them.")
        },
        {
            key: "today",
            title: qsTr("Today"),
            says: qsTr("What is due, in walking order, with the reason and the days it has. A tap on the thing opens it; done, later and strike answer the line. The list can be written for a calendar program.")
        },
        {
            key: "pollen",
            title: qsTr("Pollen"),
            says: qsTr("Pollen on hand, what should go first standing first, and the male plants. Dry pollen kept cold lasts longest; a germination test on a slide tells what is left in it. A pass without an amount makes what is left an upper bound.")
        },
        {
            key: "cones",
            title: qsTr("Cones"),
            says: qsTr("Each female cone with its scales, its passes and when it may be ripe, as a range learned from the plant and its taxon."),
            caution: spines
        },
        {
            key: "seed",
            title: qsTr("Seed"),
            says: qsTr("Batches that are not sown yet. Each goes the same way: clean, sort, cut a few open, store or sow. The harvest table shows a batch as one bar that splits as you work."),
            caution: poison
        },
        {
            key: "trays",
            title: qsTr("Trays"),
            says: qsTr("Seed that was sown. Look at each tray from time to time and enter the look even when nothing is new: that is knowledge too. Beside the counts stands what is still to come, as a range.")
        },
        {
            key: "pots",
            title: qsTr("Pots"),
            says: qsTr("Pot groups: plants of one cone in one size of pot that are moved together. What is due for a larger pot says so."),
            caution: lifting
        },
        {
            key: "out",
            title: qsTr("Out"),
            says: qsTr("What was sold, planted out, given up or died. Everything here still leads back to its cone.")
        },
        {
            key: "crosses",
            title: qsTr("Which crosses to make"),
            says: qsTr("Every cross that the cones and the pollen on hand allow, with kinship and the plants to expect, and the best choice within pollen and bench. Pin one that must be made, forbid one that must not; what cannot be is said in words.")
        },
        {
            key: "results",
            title: qsTr("Results"),
            says: qsTr("Germination of each cross as a range, what is still to come, what may explain the differences, and what loggers measured. Crosses that share a letter cannot be told apart by the counts there are.")
        },
        {
            key: "season",
            title: qsTr("Season plan"),
            says: qsTr("Pots, litres of mix and bench space of the coming months: the line is the likeliest, the band holds it eight times in ten. The first month that does not fit is named.")
        },
        {
            key: "round",
            title: qsTr("A round"),
            says: qsTr("Walk past the trays: scan one, tap what is new, scan the next. A bench's label moves what is scanned after it. A round stands in the book with each tap, so it can be left and gone on with later.")
        },
        {
            key: "labels",
            title: qsTr("Labels"),
            says: qsTr("Choose what to print, the stock and the layout. Print the test page once and tell what its rulers measure, so that labels sit where they should. The code is always there, as symbol and in letters.")
        },
        {
            key: "lot",
            title: qsTr("One lot"),
            says: qsTr("What it is, how many, where; its line back to the cone with what was lost at each step; what can be done now, likeliest first; its history, each entry to be taken back by one that names it.")
        },
        {
            key: "inspect",
            title: qsTr("A tray in the hand"),
            says: qsTr("Tap plus for each new root, each first leaf, each seed taken out dead. Count only what is new since the last look. Nothing new is one tap. Scan the next tray to enter this one and go on.")
        },
        {
            key: "table",
            title: qsTr("The harvest table"),
            says: qsTr("The bar is the batch, its pieces what was lost, sank, floated and opened. The range on it is how many are filled. Floaters are not thrown away unopened unless the float test is known to hold for the taxon: a year would be lost."),
            caution: poison
        },
        {
            key: "pollinate",
            title: qsTr("Pollinate"),
            says: qsTr("One pass over a cone whose scales are loose. Repeat it every second or third day until the cone tightens (common practice). Enter each pass with its own pollen and, where you know it, the amount."),
            caution: spines
        },
        {
            key: "check scales",
            title: qsTr("A look at the scales"),
            says: qsTr("Closed, loose or tight again: the days between loose and tight are those in which pollen can be taken.")
        },
        {
            key: "watch male cone",
            title: qsTr("Watch a male cone"),
            says: qsTr("When it comes loose, is taken off, is spent. A cone that sheds is due for collecting.")
        },
        {
            key: "new pollen",
            title: qsTr("Pollen collected"),
            says: qsTr("Pollen of one male shed over a few days and kept together is one lot. Say how it is kept: that decides how long it lasts.")
        },
        {
            key: "harvest",
            title: qsTr("Harvest"),
            says: qsTr("The cone falls apart; count the seeds, or weigh hundreds of them and then all. From here every seed is accounted for."),
            caution: poison
        },
        {
            key: "clean",
            title: qsTr("Clean"),
            says: qsTr("Take the flesh off, soak and change the water. Enter what was lost, also when it is none."),
            caution: poison
        },
        {
            key: "sort",
            title: qsTr("Sort"),
            says: qsTr("Tell filled seed from empty by a test that leaves it whole: floating, shaking, by eye, by X-ray. What judged a seed stays with it through tray and pot, so the test can be judged later."),
            caution: poison
        },
        {
            key: "open",
            title: qsTr("Cut some open"),
            says: qsTr("The only sure answer, at the price of the seed. A few of each part narrow the range much; the harvest table says how much a tenth more would show."),
            caution: qsTr("A sharp blade and a slippery seed: hold it in a clamp and cut away from the hand. ") + poison
        },
        {
            key: "store",
            title: qsTr("Store"),
            says: qsTr("Seed of many cycads must ripen on for months before it can sprout. Say where it lies and until when; it comes up again when it is time to look.")
        },
        {
            key: "sow",
            title: qsTr("Sow"),
            says: qsTr("Choose the batch's filled seed, the kind of tray and how many; the seeds are shared out evenly. Each tray gets a code for its label."),
            caution: dust + " " + heat
        },
        {
            key: "pot",
            title: qsTr("Pot seedlings"),
            says: qsTr("From the tray into a first pot, leaves first. They become a pot group of their own, or join one of the same cone and judgement."),
            caution: dust
        },
        {
            key: "pot on",
            title: qsTr("Pot on"),
            says: qsTr("Into the next size of pot. Take as many as are ready; the rest stay where they are."),
            caution: dust + " " + lifting
        },
        {
            key: "move",
            title: qsTr("Move"),
            says: qsTr("Give it another place. A bench's label scanned on a round does the same for many."),
            caution: lifting
        },
        {
            key: "lose",
            title: qsTr("Died"),
            says: qsTr("Seed, seedlings or plants that died. Enter what is seen, on the day it is seen.")
        },
        {
            key: "discard",
            title: qsTr("Throw away"),
            says: qsTr("What is thrown away on purpose. Floaters that nobody cut open are asked about first."),
            caution: poison
        },
        {
            key: "sell",
            title: qsTr("Sell"),
            says: qsTr("To whom and for how much. The papers of a sale lead each plant back to its parents."),
            caution: permit
        },
        {
            key: "plant out",
            title: qsTr("Plant out"),
            says: qsTr("For good, into the ground. It leaves the pots but not the book.")
        },
        {
            key: "recount",
            title: qsTr("Count again"),
            says: qsTr("When there are more or fewer than the book says. The difference is noted as unexplained and reported, not hidden.")
        },
        {
            key: "buy in",
            title: qsTr("Buy in"),
            says: qsTr("Seed or plants from elsewhere. Write what the supplier says of parents and papers into the note."),
            caution: permit
        },
        {
            key: "new plant",
            title: qsTr("A parent plant"),
            says: qsTr("Name, taxon, sex once a cone showed it, origin and papers. What is set right later leaves what stood before in the book."),
            caution: permit
        },
        {
            key: "new place",
            title: qsTr("A place"),
            says: qsTr("A house holds benches, a bench bays. With length and width the plan knows how much fits.")
        },
        {
            key: "new pot",
            title: qsTr("A kind of tray or pot"),
            says: qsTr("Its real litres and size, measured: a class name of the trade is no volume.")
        },
        {
            key: "new mix",
            title: qsTr("A potting mix"),
            says: qsTr("Its parts by volume, and how much volume is lost when they are mixed. Measure it once with a bucket."),
            caution: dust
        },
        {
            key: "amend",
            title: qsTr("Amending a pot, mix, place or kind of plant"),
            says: qsTr("What was entered wrong is put right in its row, and all that is reckoned goes by it from then on. What stood before is kept in the book, so it is not undone but amended again.")
        },
        {
            key: "undo",
            title: qsTr("Taking back a mistake"),
            says: qsTr("Nothing is rubbed out. Undo, or the entry's own button in a lot's history, enters its mirror; both stay to be seen. Then enter it anew.")
        }
    ]

    function indexOf(key: string): int {
        for (let i = 0; i < topics.length; ++i)
            if (topics[i].key === key)
                return i;
        return -1;
    }
    /// The topics in which every word that was typed stands somewhere.
    function found(typed: string): var {
        const words = typed.toLowerCase().split(/\s+/).filter(word => word !== "");
        return topics.filter(topic => {
            const all = (topic.title + " " + topic.says + " " + (topic.caution ?? "")).toLowerCase();
            return words.every(word => all.includes(word));
        });
    }
}
