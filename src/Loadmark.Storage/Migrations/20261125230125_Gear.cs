using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Loadmark.Storage.Migrations
{
    /// <inheritdoc />
    internal partial class Gear : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<long>(
                name: "UsesRevision",
                table: "Rigs",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0L)
                .Annotation("Relational:ColumnOrder", 7);

            migrationBuilder.CreateTable(
                name: "Counts",
                columns: table => new
                {
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Value = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Counts", x => x.Name);
                });

            migrationBuilder.CreateTable(
                name: "Gear",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Kind = table.Column<int>(type: "INTEGER", nullable: false),
                    Tag = table.Column<string>(type: "TEXT", nullable: false),
                    TagKey = table.Column<string>(type: "TEXT", nullable: true),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Label = table.Column<string>(type: "TEXT", nullable: false),
                    Words = table.Column<string>(type: "TEXT", nullable: false),
                    Revision = table.Column<long>(type: "INTEGER", nullable: false),
                    Stamp = table.Column<long>(type: "INTEGER", nullable: false),
                    Changed = table.Column<long>(type: "INTEGER", nullable: false),
                    IsRemoved = table.Column<bool>(type: "INTEGER", nullable: false),
                    Text = table.Column<byte[]>(type: "BLOB", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Gear", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "GearUses",
                columns: table => new
                {
                    RigId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Kind = table.Column<int>(type: "INTEGER", nullable: false),
                    TagKey = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_GearUses", x => new { x.RigId, x.Kind, x.TagKey });
                    table.ForeignKey(
                        name: "FK_GearUses_Rigs_RigId",
                        column: x => x.RigId,
                        principalTable: "Rigs",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "GearChanges",
                columns: table => new
                {
                    GearId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Number = table.Column<long>(type: "INTEGER", nullable: false),
                    What = table.Column<string>(type: "TEXT", nullable: false),
                    Made = table.Column<long>(type: "INTEGER", nullable: false),
                    Tag = table.Column<string>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Label = table.Column<string>(type: "TEXT", nullable: false),
                    Words = table.Column<string>(type: "TEXT", nullable: false),
                    IsRemoved = table.Column<bool>(type: "INTEGER", nullable: false),
                    Text = table.Column<byte[]>(type: "BLOB", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_GearChanges", x => new { x.GearId, x.Number });
                    table.ForeignKey(
                        name: "FK_GearChanges_Gear_GearId",
                        column: x => x.GearId,
                        principalTable: "Gear",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "GearDecisions",
                columns: table => new
                {
                    RigId = table.Column<Guid>(type: "TEXT", nullable: false),
                    GearId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Revision = table.Column<long>(type: "INTEGER", nullable: false),
                    TakesNew = table.Column<bool>(type: "INTEGER", nullable: false),
                    Made = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_GearDecisions", x => new { x.GearId, x.RigId });
                    table.ForeignKey(
                        name: "FK_GearDecisions_Gear_GearId",
                        column: x => x.GearId,
                        principalTable: "Gear",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "FK_GearDecisions_Rigs_RigId",
                        column: x => x.RigId,
                        principalTable: "Rigs",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "GearReadings",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    GearId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Kind = table.Column<int>(type: "INTEGER", nullable: false),
                    Current = table.Column<decimal>(type: "TEXT", precision: 28, scale: 12, nullable: false),
                    Duration = table.Column<decimal>(type: "TEXT", precision: 28, scale: 12, nullable: true),
                    MeterShare = table.Column<decimal>(type: "TEXT", precision: 28, scale: 12, nullable: true),
                    MeterPlus = table.Column<decimal>(type: "TEXT", precision: 28, scale: 12, nullable: true),
                    Taken = table.Column<long>(type: "INTEGER", nullable: false),
                    Note = table.Column<string>(type: "TEXT", nullable: true),
                    Removed = table.Column<long>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_GearReadings", x => x.Id);
                    table.ForeignKey(
                        name: "FK_GearReadings_Gear_GearId",
                        column: x => x.GearId,
                        principalTable: "Gear",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "IX_Rigs_Removed_UsesRevision_Revision",
                table: "Rigs",
                columns: new[] { "Removed", "UsesRevision", "Revision" });

            migrationBuilder.CreateIndex(
                name: "IX_Gear_Kind_TagKey",
                table: "Gear",
                columns: new[] { "Kind", "TagKey" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Gear_Stamp",
                table: "Gear",
                column: "Stamp");

            migrationBuilder.CreateIndex(
                name: "IX_GearDecisions_RigId",
                table: "GearDecisions",
                column: "RigId");

            migrationBuilder.CreateIndex(
                name: "IX_GearReadings_GearId",
                table: "GearReadings",
                column: "GearId");

            migrationBuilder.CreateIndex(
                name: "IX_GearUses_Kind_TagKey",
                table: "GearUses",
                columns: new[] { "Kind", "TagKey" });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "Counts");

            migrationBuilder.DropTable(
                name: "GearChanges");

            migrationBuilder.DropTable(
                name: "GearDecisions");

            migrationBuilder.DropTable(
                name: "GearReadings");

            migrationBuilder.DropTable(
                name: "GearUses");

            migrationBuilder.DropTable(
                name: "Gear");

            migrationBuilder.DropIndex(
                name: "IX_Rigs_Removed_UsesRevision_Revision",
                table: "Rigs");

            migrationBuilder.DropColumn(
                name: "UsesRevision",
                table: "Rigs");
        }
    }
}
