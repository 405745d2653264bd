using System.Security.Cryptography;
using System.Text;
using Loadmark.Core.Rigs;

namespace Loadmark.Files;

/// <summary>Names the state of a rig by what it says, whatever its file's comments and spacing.</summary>
public static class RigVersion
{
    private const int Characters = 8;

    /// <summary>The version: eight hexadecimal digits of the SHA-256 of the rig as the program writes it.</summary>
    public static string Of(Rig rig) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(RigFileWriter.Write(rig.WithoutLibrary()))))[..Characters];
}
