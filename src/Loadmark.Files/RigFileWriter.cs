using System.Globalization;
using Loadmark.Core.Rigs;
using Loadmark.Files.Values;
using Loadmark.Files.Writing;

namespace Loadmark.Files;

/// <summary>Writes rigs as rig files, in the program's own spelling and order of keys.</summary>
public static class RigFileWriter
{
    /// <summary>
    /// The rig as YAML, with line ends of one character. Reading it gives the same rig, with the same gear library where some of it is
    /// taken from there.
    /// </summary>
    /// <param name="rig">The rig.</param>
    /// <exception cref="ArgumentException">
    /// The rig is one that no rig file holds: it refers to what it does not have, has an id twice or one that cannot be
    /// written, or a figure that no text reads back as.
    /// </exception>
    public static string Write(Rig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        rig = RigGear.Settle(rig);
        var yaml = new YamlWriter();
        WriteRig(yaml, rig);
        var text = yaml.Finish();
        var reading = RigFileReader.Read(text, rig.Name, new RigGear(rig));
        if (reading.Rig is null)
            throw new ArgumentException($"The rig cannot be written as a rig file. {reading.Errors[0].Message}", nameof(rig));
        if (reading.Rig != rig)
            throw new ArgumentException("The rig cannot be written as a rig file: some of it would read back differently.", nameof(rig));
        return text;
    }

    /// <summary>Writes the keys of a rig. Whether it reads back is for the caller to check.</summary>
    internal static void WriteRig(YamlWriter yaml, Rig rig)
    {
        yaml.BeginGroup();
        yaml.Entry("rig", rig.Name);
        if (rig.Mains is { } mains)
            yaml.Entry("mains", mains.Hertz is { } hertz ? $"{FigureText.Of(mains.Volts)} {FigureText.Of(hertz)}" : FigureText.Of(mains.Volts));
        if (rig.Headroom is { } headroom)
            yaml.Entry("headroom", $"{(headroom * 100).ToString("0.##############", CultureInfo.InvariantCulture)} %");
        WriteNamed(yaml, "loads", rig.Loads, LoadWriter.Write);
        WriteNamed(yaml, "supplies", rig.Supplies, static (supplies, supply) => SupplyWriter.Write(supplies, supply));
        WriteNamed(yaml, "leads", rig.Leads, WiringWriter.WriteLead);
        if (rig.Wired is { } wired)
            WiringWriter.WriteWired(yaml, wired);
        if (rig.Signal.Count > 0)
        {
            yaml.Text("signal");
            yaml.BeginList(flow: true);
            foreach (var word in rig.Signal)
                yaml.Text(word);
            yaml.EndList();
        }

        yaml.EndGroup();
    }

    private static void WriteNamed<T>(YamlWriter yaml, string key, ValueList<T> things, Action<YamlWriter, T> write)
    {
        if (things.Count == 0)
            return;
        yaml.Text(key);
        yaml.BeginGroup();
        foreach (var thing in things)
            write(yaml, thing);
        yaml.EndGroup();
    }
}
