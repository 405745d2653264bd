namespace Loadmark.Meters.Scpi;

/// <summary>An entry of an instrument's list of errors: the answer to <c>SYSTem:ERRor?</c>.</summary>
/// <param name="Code">Its number; 0 for no error, below zero for those of SCPI itself.</param>
/// <param name="Message">What it says.</param>
public sealed record InstrumentError(int Code, string Message)
{
    /// <summary>Reads an answer such as <c>-113,"Undefined header"</c>.</summary>
    /// <param name="answer">The answer, without its end of line.</param>
    /// <returns>Null where it is none.</returns>
    public static InstrumentError? Read(string answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        if (ScpiNumber.Read(answer, out var code, out var length) != NumberForm.Decimal
            || code != Math.Truncate(code) || Math.Abs(code) > int.MaxValue)
            return null;
        var rest = answer.AsSpan(length).Trim();
        if (rest.IsEmpty)
            return new InstrumentError((int)code, "");
        return rest[0] == ',' ? new InstrumentError((int)code, rest[1..].Trim().Trim('"').ToString()) : null;
    }
}
