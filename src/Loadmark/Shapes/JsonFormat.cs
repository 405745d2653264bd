using System.Text.Encodings.Web;
using System.Text.Json;

namespace Loadmark.Shapes;

/// <summary>How figures and texts look in every JSON answer: SI units, plain decimals, unknown as null.</summary>
internal static class JsonFormat
{
    private const int Decimals = 9; // a nanovolt: below it there is only the dust of divisions

    /// <summary>UTF-8 as it is, without escapes for letters that need none. The answers are never put into a web page unescaped.</summary>
    public static JsonWriterOptions Options { get; } = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Writes one answer and a line end.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="shape">The answer's shape.</param>
    /// <param name="answer">The answer.</param>
    public static void WriteLine<T>(Stream output, JsonValue<T> shape, T answer) => WriteLine(output, json => shape.Write(json, answer));

    /// <summary>Writes one answer and a line end.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="write">Writes the answer.</param>
    public static void WriteLine(Stream output, Action<Utf8JsonWriter> write)
    {
        using (var json = new Utf8JsonWriter(output, Options))
            write(json);

        output.Write("\n"u8);
        output.Flush();
    }

    /// <summary>Writes a number, rounded to nine decimals, without trailing zeros; null when not known.</summary>
    public static void WriteFigure(this Utf8JsonWriter json, decimal? value)
    {
        if (value is { } number)
            json.WriteNumberValue(Math.Round(number, Decimals, MidpointRounding.AwayFromZero) / 1.0000000000000000000000000000m);
        else
            json.WriteNullValue();
    }

    /// <summary>The two ends of a range, to be written as <see cref="Range"/>; null when it is not known.</summary>
    public static IReadOnlyList<decimal?>? Ends<TUnit>(QuantityRange<TUnit>? range)
        where TUnit : struct, IUnit =>
        range is { } ends ? [ends.Low.Value, ends.High.Value] : null;

    /// <summary>The two ends of a range: <c>[9,18]</c>.</summary>
    /// <param name="about">What the range is, in which unit.</param>
    /// <param name="each">What each end is.</param>
    public static JsonTuple Range(string about, string each) => new(about, 2, new ValueDescription(JsonKind.Number, each));
}
