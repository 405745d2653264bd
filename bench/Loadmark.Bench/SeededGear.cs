using System.Text;
using Loadmark.Core.Gear;
using Loadmark.Core.Texts;
using Loadmark.Workshop.Library;

namespace Loadmark.Bench;

/// <summary>A made-up library and rigs that have some of it.</summary>
internal static class SeededGear
{
    private const int LoadsOfARig = 8;

    private static readonly string[] Sorts = ["Delay", "Reverb", "Chorus", "Phaser", "Tremolo", "Overdrive", "Fuzz", "Compressor", "Equaliser", "Looper", "Tuner", "Octaver", "Flanger", "Filter", "Boost", "Splitter"];

    private static readonly string[] Looks = ["long", "short", "green", "amber", "silver", "double", "old", "late", "narrow", "heavy", "plain", "studded", "coastal", "upright", "slanted", "little", "wide", "northern", "quiet", "bright"];

    private static readonly string[] Marks = ["with a tail", "for the pit", "second from left", "mended twice", "with a new switch", "of the upper shelf", "", "", ""];

    /// <summary>Pieces that many rigs have, each with how many.</summary>
    public static (string Tag, int Rigs)[] Shared { get; } = [("PD-00050", 50), ("PD-00200", 200), ("PD-00500", 500)];

    /// <summary>A table of loads.</summary>
    public static string Table(Random random, int count)
    {
        var text = new StringBuilder("tag,name,label,run,words\n");
        for (var number = 0; number < count; number++)
        {
            var amps = 10 * random.Next(1, 50);
            text.Append($"PD-{number:00000},{Pick(random, Sorts)} {Pick(random, Looks)} {Pick(random, Looks)} {Pick(random, Marks)} {number % 997},9V DC {amps}mA centre negative,{amps - 2} mA,shelf {random.Next(40)}; hire\n");
        }

        return text.ToString();
    }

    /// <summary>Rigs of eight loads each, with figures of the library copied in or taken from there, fed by two supplies.</summary>
    public static List<string> Rigs(Random random, GearSnapshot library, int count)
    {
        var texts = new List<string>(count);
        for (var number = 0; number < count; number++)
        {
            List<LibraryGear> gear = [.. Shared.Where(shared => number < shared.Rigs).Select(shared => library.Find(GearKind.Load, shared.Tag)!)];
            while (gear.Count < LoadsOfARig)
            {
                var one = library.Gear[random.Next(library.Gear.Length)];
                if (!gear.Contains(one) && Array.TrueForAll(Shared, shared => shared.Tag != one.Tag))
                    gear.Add(one);
            }

            var text = new StringBuilder($"rig: Board {number}\nmains: 230 V 50 Hz\nloads:\n");
            foreach (var one in gear)
                text.Append(number % 2 == 0 ? $"  {one.Tag}: {{ from: library }}\n" : $"  {one.Tag}: {{ kind: digital, label: \"{one.Stored.Content.Label}\", run: {one.Piece!.Load!.Run} }}\n");
            text.Append("supplies:\n  one: { label: \"INPUT 100-240V~ 50/60Hz\", isolated: true, outlets: { 1-4: 9 V DC 600 mA centre negative } }\n");
            text.Append($"  two: {{ label: \"INPUT 100-240V~ 50/60Hz\", isolated: true, outlets: {{ 1-4: 9 V DC {(number % 10 == 9 ? 250 : 600)} mA centre negative }} }}\nwired:\n");
            for (var load = 0; load < gear.Count; load++)
                text.Append($"  - {{ from: {(load < 4 ? "one" : "two")}/{(load % 4) + 1}, to: {gear[load].Tag} }}\n");
            texts.Add(text.ToString());
        }

        return texts;
    }

    /// <summary>How many pieces have each word of a query, or one near it, looking at every word of every piece.</summary>
    public static int Scan(IEnumerable<LibraryGear> gear, string query)
    {
        var wanted = query.ToLowerInvariant().Split([' ', '-'], StringSplitOptions.RemoveEmptyEntries);
        return gear.Count(one => Array.TrueForAll(wanted, word => $"{one.Tag} {one.Name} {one.Stored.Content.Label}".ToLowerInvariant().Split([' ', '-'], StringSplitOptions.RemoveEmptyEntries)
            .Any(known => known.StartsWith(word, StringComparison.Ordinal) || NearestWord.Find(word, [known]) is not null)));
    }

    private static string Pick(Random random, string[] words) => words[random.Next(words.Length)];
}
