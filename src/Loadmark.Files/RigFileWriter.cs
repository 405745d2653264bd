using Loadmark.Core.Rigs;
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
        rig = RigGear.Normalise(rig);
        var yaml = new YamlWriter();
        RigWriter.Write(yaml, rig);
        var text = yaml.Finish();
        var reading = RigFileReader.Read(text, rig.Name, new RigGear(rig));
        if (reading.Rig is null)
            throw new ArgumentException($"The rig cannot be written as a rig file. {reading.Errors[0].Message}", nameof(rig));
        if (reading.Rig != rig)
            throw new ArgumentException("The rig cannot be written as a rig file: some of it would read back differently.", nameof(rig));
        return text;
    }
}
