using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;
using Loadmark.Files.Keys;
using Loadmark.Files.Values;

namespace Loadmark.Files.Writing;

/// <summary>Writes one load.</summary>
internal static class LoadWriter
{
    /// <summary>Up to this many keys stand on one line.</summary>
    private const int MostOnALine = 3;

    /// <summary>Writes the load's tag and its keys; of one that has only a label, the label alone.</summary>
    public static void Write(YamlWriter yaml, Load load)
    {
        yaml.Text(load.Id);
        if (OwnKeys.Base(load.FromLibrary, load.Id, static given => given.Id) is { } given)
        {
            OwnKeys.Write(yaml, keys => WriteKeys(keys, load), keys => WriteKeys(keys, given), MostOnALine);
            return;
        }

        if (load.Label is { Text.Length: > 0 } label && load == new Load { Id = load.Id, Label = label })
        {
            yaml.Text(label.Text);
            return;
        }

        yaml.BeginGroup(flow: CountKeys(load) <= MostOnALine);
        WriteKeys(yaml, load);
        yaml.EndGroup();
    }

    /// <summary>Writes all that is said of the load, wherever it comes from.</summary>
    public static void WriteKeys(YamlWriter yaml, Load load)
    {
        yaml.Entry("name", load.Name);
        yaml.Entry("kind", load.Kind?.Text);
        yaml.Entry("label", load.Label?.Text);
        yaml.Entry("voltage", load.Voltage?.Text);
        yaml.Entry("current", load.Current);
        yaml.Entry("watts", load.Watts);
        yaml.Entry("run", load.Run);
        yaml.Entry("start", load.Start is { } start ? TimedText(start) : null);
        yaml.Entry("polarity", load.Polarity is { } polarity ? RigWords.Polarity.WordOf(polarity) : null);
        yaml.Entry("plug", load.Plug?.Name);
        yaml.Entry("ground", load.Ground is { } ground ? RigWords.Ground.WordOf(ground) : null);
        yaml.Entry("isolate", load.Isolate ? true : null);
        yaml.Entry("draws", load.Draws is { } law ? RigWords.Draws.WordOf(law) : null);
        yaml.Entry("starts_below", load.StartsBelow);
        yaml.Entry("stops_below", load.StopsBelow);
        yaml.Entry("input_capacitance", load.InputCapacitance);
        yaml.Entry("priority", load.Priority is { } priority ? $"{priority}" : null, numberIsFine: true);
    }

    /// <summary>A current with its duration, in full.</summary>
    public static string TimedText(TimedCurrent timed) => timed.Duration is { } duration
        ? $"{FigureText.Of(timed.Current)} for {FigureText.Of(duration)}"
        : FigureText.Of(timed.Current);

    private static int CountKeys(Load load)
    {
        ReadOnlySpan<bool> present =
        [
            load.Name is not null, load.Kind is not null, load.Label is not null, load.Voltage is not null,
            load.Current is not null, load.Watts is not null, load.Run is not null, load.Start is not null,
            load.Polarity is not null, load.Plug is not null, load.Ground is not null, load.Isolate,
            load.Draws is not null, load.StartsBelow is not null, load.StopsBelow is not null,
            load.InputCapacitance is not null, load.Priority is not null,
        ];
        return present.Count(true);
    }
}
