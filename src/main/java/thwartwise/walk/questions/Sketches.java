package thwartwise.walk.questions;

import java.util.List;

/** Drawings in characters that show what to measure where; ASCII, at most 78 columns. */
public final class Sketches {
  private Sketches() {}

  static final List<String> LENGTHS =
      drawn(
          """
                        length overall
            |<------------------------------------>|
            |                                      |
            |__________________________________.---'
             \\   station 1   2      3      4    /     forward -->
              \\_______________________________/
          ----+------------------------------------  baseline: a line stretched level
              |<--- forward of the aft end --->|     at the lowest point of the bottom
          """);

  static final List<String> ACROSS =
      drawn(
          """
                        middle line
                             |<- half-breadth ->|
             rail  .         |                  .  rail
                    \\        |                 /    ^
                     \\       |                /     | height,
              chine   \\______|_______________/      | straight up
                          keel                      v
             ----------------+----------------------  baseline
          """);

  static final List<String> LINE =
      drawn(
          """
           A bottom with rocker, and no thwart to lay a level on: turn it upside down.
             a string, stretched level along the middle, just touching the bottom
           ==+===============+===========o===========+===============+==  baseline
             |          _____|_______.--' '--.______ |               |
             | height .'  bottom, upside down       '|._____         |
             v  keel '                               |      '---.__  v
             |       |                        height | chine       \\_|
             '-------'-------------------------------v--------------'  rail, on blocks
           Straight down from the string to keel, chine and rail, with a spirit level
           laid across: that is their height. Nothing is to be taken off or added.
          """);

  static final List<String> ENDS =
      drawn(
          """
             .------------------------------.     first the scale here, a block as high
              \\____________________________/      at the other end; then the other way
                  ^                    ^          round, the boat level both times
                [_|_]                 _|_
             == scale ===============|___|===  ground
          |<---->|  aft block, forward of the aft end
          |<-------------------------->|  fore block, forward of the aft end
          """);

  static final List<String> TILT =
      drawn(
          """
             1. level                          2. trestle moved, balanced again
                                                                      __.--'|
             |'--------------------'|                        __.--''   o    /  ^ one end
             |          o           |                |'--'' centre  __.--''    | of the
              \\_________|__________/                  \\____ |__.--''           v board up
                        A                                  \\|''
                        |  balance point                    A  moved by a hand
          -----------------------------------------------------------------------
          """);

  /** One chamber of each kind. */
  static final List<String> OPENINGS =
      drawn(
          """
                    oar notch                    deck hatch
            ______.----.__________________________[====]___________.
           |  |       side             seat      |  deck          /
           |  | notch         .------------.     |               /
           |  |               | face hatch |  o  | chamber      /
           |(o)  drain        '---[____]---'  cable hole      .'
           '-------------------------------------------------'
            transom                                        bow -->
          """);

  static final List<String> NOTCH =
      drawn(
          """
           seen from aft
             rail .------.   notch  .-------------. rail    ^ height of its
                   \\     |          |            /          | lowest edge,
                    \\    '----------'           /           v from the baseline
                     \\   |<-length->|          /
                      \\       |<-->|          /     port of the middle: to the
                       \\___________|_________/      middle of its lowest edge
                              middle line
          """);

  static final List<String> OAR_NOTCH =
      drawn(
          """
           seen from the side
             ______________       _________________ rail    ^ height of its
             |             \\_____/                 \\        | lowest edge,
             |             |<--->| length of that   \\       | from the baseline
             |<--------------->|   edge              \\      v
               forward of the aft end
          """);

  static final List<String> DRAIN =
      drawn(
          """
           seen from aft
             rail .                         . rail
                   \\            |          /
                    \\  (o)      |         /     ^ height of its middle,
                     \\__|_______|________/      v from the baseline
                        |<----->|   port of the middle
             forward of the aft end: to the middle of the hole, or the word transom.
             diameter: clear across the hole. No bung in it under way: closed by no.
          """);

  static final List<String> DECK_HATCH =
      drawn(
          """
           seen from the side, and from above
                               ___[======]_____ deck    ^ height of its coaming,
             |                |  coaming      /         | where lowest,
             |                |   chamber    /          v from the baseline
             |<----------------------->|  forward of the aft end, to its middle
                              .-----------------.
              - - - middle line - - - [####] - -  >    width: of the hole, across
                              '-----------------'    port of the middle: to its middle
          """);

  static final List<String> FACE_HATCH =
      drawn(
          """
             front of a seat, or a bulkhead             seen from above
              ________________________                   ____________________
             |     .----------.       |     ^ height    |      | chamber      '-.
             |     |  lid     |       |     | of its    | - - -# - middle line   >
             |     '----------'       |     | lowest    |______|______________.-'
             |_____|<-width-->|_______|     v edge      |<---->| forward of the aft end
             port of the middle: to the middle of its lowest edge; here on it, 0.
          """);

  static final List<String> CABLE_HOLE =
      drawn(
          """
             bulkhead or seat top
              ______________
             |       o =====|==== cable     ^ height of the middle of the hole,
             |______________|               v from the baseline
             forward of the aft end, and port of the middle: to the middle of the hole.
             diameter: clear across the hole, cable or none. Closed by: a cable gland
             or sealant that stays; a cable through an open hole closes nothing.
          """);

  /** One place of each kind, seen from above. */
  static final List<String> CHAMBERS =
      drawn(
          """
            .--------------------------------------.__
            | stern |====side=====|      |thwart|     '-.  bow
            |       |             |      |      |   |     '-.
            |       |   .-------. |      |      |   |        >    forward -->
            |       |   | block | |      |      |   |     .-'
            |       |=='======='==|      |      |   |  .-'
            '--------------------------------------'--'
          """);

  static final List<String> BOW_CHAMBER =
      drawn(
          """
           seen from the side
                                     _____.------.  a sloping deck: measure the
             rail             ___.--'            |  underside of its LOWER end.
             ________________|  ^                |  rail: a deck from rail to rail.
             |      bulkhead |  | underside      /
             |               |  | of its top    /
             |               |  v    chamber   /
             |_______________|____________.---'     down to: hull, or a floor in it
             |<------------->|  its bulkhead, forward of the aft end, inside
          """);

  static final List<String> STERN_CHAMBER =
      drawn(
          """
           seen from the side
              ______________
             |   seat  ^    |                 underside of its top: where it is lowest
             |         |    |
             | chamber |    | bulkhead
             |_________v____|______________   down to: hull, or a floor in it
             |<------------>|  its bulkhead, forward of the aft end, inside
          """);

  static final List<String> THWART_CHAMBER =
      drawn(
          """
           seen from the side
                                   ______________   thwart   ^ underside of its top
                                  |   chamber    |           |
             _____________________|______________|_________  v
             |<------------------>|  its aft face, inside      down to: hull, or the
             |<--------------------------------->|  its fore face       floor it is on
          """);

  static final List<String> SIDE_CHAMBER =
      drawn(
          """
           seen from aft
             rail .                  |                   . rail
                   \\ .--------.      |                  /
                    \\| top   ^|      |                 /   underside of its top
                     \\      | | face |                /
                      \\_____v_|______|_______________/     down to: hull, or a floor
                              |<---->|  its face, from the middle: to its inside
           seen from above
              .----.=========.------------.
              |    '--face---'             '-.
              |                               >   forward -->
              '---------------------------.--'
              |<-->|  its aft end, inside
              |<------------>|  its fore end, inside
          """);

  static final List<String> BOX =
      drawn(
          """
             seen from the side            seen from above
                .----------.  up to           port limit
                |          |              .--------------.
                | chamber  |              |              |  forward -->
                '----------'  down to     '--------------'
             aft limit   fore limit        starboard limit (with a minus)
          """);

  public static final List<String> SEAT =
      drawn(
          """
             rail .            o   person        . rail
                   \\          /|\\              /
                    \\   ______|_____________  /    seat   ^
                     \\  |     |            | /            | height of the seat
                      \\_|_____|____________|/             v
             ------------------+---------------  baseline
                               |<--->|  reach: from the middle line to the middle of
                                        whoever sits as far out as the place allows
          """);

  public static final List<String> PLACES =
      drawn(
          """
             seen from above                      across: from side to side
              .---------------------------.
              |   |     port    =======     '-.   port, starboard: along that side
              |   |                   .---.    \\
              |   |  - - - - - - - - -| area -  >   forward -->   - - middle line
              |   |                   '---'    /
              |   |   starboard =======     .-'   area: people sit all over it
              '---------------------------'
                across
          """);

  public static final List<String> EDGE =
      drawn(
          """
             rail ----.        .---- rail      ^
                      |  cut   |               | height of its lowest edge,
                      '--------'  lowest edge  v straight up from the baseline
                      |<------>|  length of that edge
             forward of the aft end, and port of the middle: to the middle of that edge.
          """);

  public static final List<String> SHORT =
      drawn(
          """
             |<-- breadth over the rails -->|
             .                              .      ^
              \\                            /       | depth, where the rail is lowest
               \\__________________________/        v
               |<- breadth of the bottom ->|
          """);

  private static List<String> drawn(String block) {
    return List.of(block.stripTrailing().split("\n"));
  }
}
