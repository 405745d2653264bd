namespace Loadmark.Meters.Scpi;

/// <summary>The forms of numbers in messages (IEEE 488.2, 7.7.2 and 7.7.4; the clauses are from memory).</summary>
public enum NumberForm
{
    /// <summary>No number.</summary>
    None,

    /// <summary>Decimal: whole (NR1), with a point (NR2), with an exponent (NR3).</summary>
    Decimal,

    /// <summary><c>#H</c> and hexadecimal digits.</summary>
    Hexadecimal,

    /// <summary><c>#Q</c> and octal digits.</summary>
    Octal,

    /// <summary><c>#B</c> and binary digits.</summary>
    Binary,
}
