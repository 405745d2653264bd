namespace Loadmark.Meters.Scpi;

/// <summary>What an instrument says it is: the answer to <c>*IDN?</c> (IEEE 488.2, 10.14; from memory).</summary>
/// <param name="Maker">Who made it.</param>
/// <param name="Model">Its model.</param>
/// <param name="Serial">Its serial number; null where it gives none, which it says with 0.</param>
/// <param name="Firmware">The version of its program; null where it gives none, which it says with 0.</param>
public sealed record Identification(string Maker, string Model, string? Serial, string? Firmware)
{
    private const int Fields = 4;

    /// <summary>Reads an answer of four fields separated by commas; a comma more belongs to the last.</summary>
    /// <param name="answer">The answer, without its end of line.</param>
    /// <returns>Null where it is none.</returns>
    public static Identification? Read(string answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var fields = answer.Split(',', Fields, StringSplitOptions.TrimEntries);
        if (fields.Length < Fields || fields[0].Length == 0 || fields[1].Length == 0)
            return null;
        return new Identification(fields[0], fields[1], Known(fields[2]), Known(fields[3]));
    }

    private static string? Known(string field) => field is "0" or "" ? null : field;
}
